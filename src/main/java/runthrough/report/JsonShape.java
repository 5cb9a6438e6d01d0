package runthrough.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/**
 * What a kind of JSON object holds: of each member its name, its meaning and where its value comes from. Documents and their
 * JSON Schema are both made from it, so that the two cannot part. Immutable; every method that adds a member gives a new shape.
 * It is long because each kind of member has such a method, with what both need of it side by side.
 *
 * <p>A member's name carries its unit, see {@link JsonFields}. A member is null only where it is said to be optional.
 *
 * @param <T> what such an object is made from
 */
public final class JsonShape<T> {
    private final String name;
    private final List<Member<T>> members;

    private JsonShape(String name, List<Member<T>> members) {
        this.name = name;
        this.members = List.copyOf(members);
    }

    /** One member. */
    private record Member<T>(String name, String meaning, Type type, Writer<T> writer) {}

    /** Describes values; what it refers to is put among the definitions. */
    @FunctionalInterface
    private interface Type {
        ObjectNode schema(Map<String, ObjectNode> definitions);
    }

    /** Puts the member of an object. */
    @FunctionalInterface
    private interface Writer<T> {
        void write(T from, boolean chance, JsonFields into);
    }

    /** An empty shape, called {@code name} in schemas. */
    public static <T> JsonShape<T> named(String name) {
        return new JsonShape<>(name, List.of());
    }

    /** A mean over replications with its interval. */
    private static JsonShape<Estimate> estimate() {
        return JsonShape.<Estimate>named("estimate")
                .number("mean", "Mean over the replications.", Estimate::mean)
                .with(
                        "low",
                        "Lower end of the 95 % interval; null where there is none.",
                        orNull(plain("number")),
                        end("low", true))
                .with(
                        "high",
                        "Upper end of the 95 % interval; null where there is none.",
                        orNull(plain("number")),
                        end("high", false));
    }

    /** The same with how the interval was made, the deviation between replications, and their number. */
    private static JsonShape<Estimate> estimateInFull() {
        return JsonShape.<Estimate>named("estimate_in_full")
                .optionalNumber("mean", "Mean over the replications.", mean -> OptionalDouble.of(mean.mean()))
                .with(
                        "interval_low",
                        "Lower end of the 95 % confidence interval; null where there is none.",
                        orNull(plain("number")),
                        end("interval_low", true))
                .with(
                        "interval_high",
                        "Upper end of the 95 % confidence interval; null where there is none.",
                        orNull(plain("number")),
                        end("interval_high", false))
                .with(
                        "interval_method",
                        "How the interval was made: student-t over replications; wilson for a share, from pooled counts;"
                                + " rule-of-three for what was never seen; null without an interval.",
                        orNull(oneOf(Interval.Method.class)),
                        (from, chance, into) -> from.interval()
                                .filter(any -> chance)
                                .ifPresentOrElse(
                                        ends -> into.text("interval_method", JsonFields.word(ends.method())),
                                        () -> into.in("interval_method", null)))
                .optionalNumber(
                        "standard_deviation",
                        "Standard deviation between replications; null with a single one.",
                        Estimate::sd)
                .count("replications", "Replications that gave a value.", Estimate::replications);
    }

    public JsonShape<T> text(String member, String meaning, Function<T, String> value) {
        return with(member, meaning, plain("string"), (from, chance, into) -> into.text(member, value.apply(from)));
    }

    public JsonShape<T> optionalText(String member, String meaning, Function<T, Optional<String>> value) {
        return with(
                member,
                meaning,
                orNull(plain("string")),
                (from, chance, into) -> value.apply(from)
                        .ifPresentOrElse(text -> into.text(member, text), () -> into.in(member, null)));
    }

    public JsonShape<T> texts(String member, String meaning, Function<T, List<String>> value) {
        return with(
                member, meaning, array(plain("string")), (from, chance, into) -> into.texts(member, value.apply(from)));
    }

    /** Texts by names that the user gave. */
    public JsonShape<T> textsByName(String member, String meaning, Function<T, Map<String, String>> value) {
        return with(
                member,
                meaning,
                definitions -> node().put("type", "object")
                        .set("additionalProperties", plain("string").schema(definitions)),
                (from, chance, into) -> {
                    JsonFields texts = new JsonFields();
                    value.apply(from).forEach(texts::text);
                    into.in(member, texts);
                });
    }

    /** One of the constants of {@code words}, in small letters. */
    public <E extends Enum<E>> JsonShape<T> word(String member, String meaning, Class<E> words, Function<T, E> value) {
        return with(
                member,
                meaning,
                oneOf(words),
                (from, chance, into) -> into.text(member, JsonFields.word(value.apply(from))));
    }

    public <E extends Enum<E>> JsonShape<T> optionalWord(
            String member, String meaning, Class<E> words, Function<T, Optional<E>> value) {
        return with(
                member,
                meaning,
                orNull(oneOf(words)),
                (from, chance, into) -> value.apply(from)
                        .ifPresentOrElse(
                                word -> into.text(member, JsonFields.word(word)), () -> into.in(member, null)));
    }

    public <E extends Enum<E>> JsonShape<T> words(
            String member, String meaning, Class<E> words, Function<T, List<E>> value) {
        return with(
                member,
                meaning,
                array(oneOf(words)),
                (from, chance, into) -> into.texts(
                        member, value.apply(from).stream().map(JsonFields::word).toList()));
    }

    public JsonShape<T> flag(String member, String meaning, Predicate<T> value) {
        return with(member, meaning, plain("boolean"), (from, chance, into) -> into.flag(member, value.test(from)));
    }

    public JsonShape<T> count(String member, String meaning, ToLongFunction<T> value) {
        return with(
                member, meaning, plain("integer"), (from, chance, into) -> into.count(member, value.applyAsLong(from)));
    }

    public JsonShape<T> optionalCount(String member, String meaning, Function<T, Optional<Long>> value) {
        return with(
                member,
                meaning,
                orNull(plain("integer")),
                (from, chance, into) -> value.apply(from)
                        .ifPresentOrElse(count -> into.count(member, count), () -> into.in(member, null)));
    }

    /** A number that is always finite. */
    public JsonShape<T> number(String member, String meaning, ToDoubleFunction<T> value) {
        return with(
                member,
                meaning,
                plain("number"),
                (from, chance, into) -> into.number(member, value.applyAsDouble(from)));
    }

    /** A number that is null where there is none or where it is not finite. */
    public JsonShape<T> optionalNumber(String member, String meaning, Function<T, OptionalDouble> value) {
        return with(
                member,
                meaning,
                orNull(plain("number")),
                (from, chance, into) -> into.number(member, value.apply(from)));
    }

    /** An end of an interval; null where nothing is random. */
    public JsonShape<T> end(String member, String meaning, ToDoubleFunction<T> value) {
        return with(
                member,
                meaning,
                orNull(plain("number")),
                (from, chance, into) -> into.number(member, chance ? value.applyAsDouble(from) : Double.NaN));
    }

    public JsonShape<T> estimate(String member, String meaning, Function<T, Estimate> value) {
        return in(member, meaning, estimate(), value);
    }

    public JsonShape<T> optionalEstimate(String member, String meaning, Function<T, Optional<Estimate>> value) {
        return optional(member, meaning, estimate(), value);
    }

    /** A mean over replications with all that is known of it. */
    public JsonShape<T> estimateInFull(String member, String meaning, Function<T, Estimate> value) {
        return in(member, meaning, estimateInFull(), value);
    }

    /** Another object within. */
    public <U> JsonShape<T> in(String member, String meaning, JsonShape<U> shape, Function<T, U> value) {
        return with(
                member,
                meaning,
                shape::reference,
                (from, chance, into) -> into.in(member, shape.fields(value.apply(from), chance)));
    }

    /** Another object within, or null. */
    public <U> JsonShape<T> optional(
            String member, String meaning, JsonShape<U> shape, Function<T, Optional<U>> value) {
        return with(
                member,
                meaning,
                orNull(shape::reference),
                (from, chance, into) -> into.in(
                        member,
                        value.apply(from)
                                .map(found -> shape.fields(found, chance))
                                .orElse(null)));
    }

    public <U> JsonShape<T> list(String member, String meaning, JsonShape<U> shape, Function<T, List<U>> values) {
        return with(
                member,
                meaning,
                array(shape::reference),
                (from, chance, into) -> into.list(
                        member,
                        values.apply(from).stream()
                                .map(value -> shape.fields(value, chance))
                                .toList()));
    }

    /** The members of another shape, in the same object. */
    public <U> JsonShape<T> and(JsonShape<U> shape, Function<T, U> value) {
        JsonShape<T> all = this;
        for (Member<U> member : shape.members) {
            all = all.with(
                    member.name(),
                    member.meaning(),
                    member.type(),
                    (from, chance, into) -> member.writer().write(value.apply(from), chance, into));
        }
        return all;
    }

    /** The names of all members, in their order. */
    public List<String> names() {
        return members.stream().map(Member::name).toList();
    }

    /** The object made from {@code value}; without intervals where nothing is left to {@code chance}. */
    public JsonFields fields(T value, boolean chance) {
        JsonFields fields = new JsonFields();
        members.forEach(member -> member.writer().write(value, chance, fields));
        return fields;
    }

    /** Describes objects that have all the members of {@code parts}, in their order, and no others. */
    public static ObjectNode schema(List<JsonShape<?>> parts, Map<String, ObjectNode> definitions) {
        ObjectNode schema = node().put("type", "object");
        ObjectNode properties = schema.putObject("properties");
        parts.forEach(part -> part.describe(properties, definitions));
        properties.fieldNames().forEachRemaining(schema.putArray("required")::add);
        return schema.put("additionalProperties", false);
    }

    private void describe(ObjectNode properties, Map<String, ObjectNode> definitions) {
        for (Member<T> member : members) {
            ObjectNode described = node().put("description", member.meaning());
            described.setAll(member.type().schema(definitions));
            properties.set(member.name(), described);
        }
    }

    private ObjectNode reference(Map<String, ObjectNode> definitions) {
        if (!definitions.containsKey(name)) {
            definitions.put(name, node());
            definitions.put(name, schema(List.of(this), definitions));
        }
        return node().put("$ref", "#/definitions/" + name);
    }

    private static Writer<Estimate> end(String member, boolean isLow) {
        return (from, chance, into) -> into.number(member, JsonFields.end(from, chance, isLow));
    }

    private JsonShape<T> with(String member, String meaning, Type type, Writer<T> writer) {
        List<Member<T>> more = new ArrayList<>(members);
        more.add(new Member<>(member, meaning, type, writer));
        return new JsonShape<>(name, more);
    }

    private static Type plain(String type) {
        return definitions -> node().put("type", type);
    }

    private static Type array(Type items) {
        return definitions -> node().put("type", "array").set("items", items.schema(definitions));
    }

    private static <E extends Enum<E>> Type oneOf(Class<E> words) {
        return definitions -> {
            ObjectNode schema = node().put("type", "string");
            Stream.of(words.getEnumConstants()).map(JsonFields::word).forEach(schema.putArray("enum")::add);
            return schema;
        };
    }

    private static Type orNull(Type type) {
        return definitions -> {
            ObjectNode either = node();
            either.putArray("anyOf").add(type.schema(definitions)).add(node().put("type", "null"));
            return either;
        };
    }

    private static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }
}
