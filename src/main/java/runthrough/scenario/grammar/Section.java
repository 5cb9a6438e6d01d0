package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import runthrough.plant.check.StandIn;
import runthrough.scenario.source.Interrupted;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * Keys that stand together.
 *
 * @param name of the section in the listing, such as "coil"
 * @param meaning in a few words
 * @param keys in the order of the listing
 * @param ways to choose between
 * @param orders of values
 */
public record Section(String name, String meaning, List<Key<?>> keys, List<Ways> ways, List<Order> orders)
        implements Shape<Values> {
    /** Of more unknown keys than anybody mistypes the first are looked at. */
    private static final int MOST_UNKNOWN = 100;

    /** What a decimal comma leaves behind between braces. */
    private static final Pattern REST_OF_A_NUMBER = Pattern.compile("[0-9].*");

    private static final String NAME = "name";

    public Section {
        keys = List.copyOf(keys);
        ways = List.copyOf(ways);
        orders = List.copyOf(orders);
    }

    /** A section of {@code keys}. */
    public static Section of(String name, String meaning, Key<?>... keys) {
        return new Section(name, meaning, List.of(keys), List.of(), List.of());
    }

    /** This section with a choice between several ways to say one thing. */
    public Section with(Ways choice) {
        List<Ways> more = new ArrayList<>(ways);
        more.add(choice);
        return new Section(name, meaning, keys, more, orders);
    }

    /** This section with {@code larger} to be more than {@code smaller}. */
    public Section inOrder(Key<Double> smaller, Key<Double> larger, boolean mayBeEqual) {
        List<Order> more = new ArrayList<>(orders);
        more.add(new Order(smaller, larger, mayBeEqual));
        return new Section(name, meaning, keys, ways, more);
    }

    @Override
    public Optional<Values> read(Raw raw, Context context) {
        if (!(raw instanceof Raw.Mapping mapping)) {
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        int before = context.problems().count();
        Values values = readPartly(mapping, context);
        return context.problems().count() == before ? Optional.of(values) : Optional.empty();
    }

    /** Reads what can be read of {@code mapping}; keys with a wrong value are left out, and {@code context} knows why. */
    public Values readPartly(Raw.Mapping mapping, Context context) {
        Interrupted.check("a scenario is read");
        Map<String, Raw.Entry> entries = entries(mapping, context);
        Set<String> meant = meant(entries.keySet());
        Map<String, Object> given = new HashMap<>();
        for (Key<?> key : keys) {
            Raw.Entry entry = entries.get(key.name());
            if (entry != null) {
                context.read(key, entry.value()).ifPresent(value -> given.put(key.name(), value));
            } else if (key.need() == Key.Need.REQUIRED && !meant.contains(key.name())) {
                refuseMissing(key, mapping, context);
            }
        }
        return checked(mapping, given, meant, context);
    }

    private Values checked(Raw.Mapping mapping, Map<String, Object> given, Set<String> meant, Context context) {
        ways.forEach(choice -> choice.check(mapping, meant, context));
        Values values = new Values(given, mapping);
        orders.forEach(order -> order.check(values, context));
        return values;
    }

    /**
     * What {@code raw} says, and what stands in for those of its keys that cannot be read, are missing, may be meant by an unknown
     * one, or contradict each other; nothing where more is wrong, as a key that is given twice.
     */
    @Override
    public Optional<Values> standIn(Raw raw, StandIn standIn) {
        if (!(raw instanceof Raw.Mapping mapping)) {
            return Optional.empty();
        }
        Set<String> meant = meant(mapping.entries().stream().map(Raw.Entry::key).toList());
        Map<String, Object> given = new HashMap<>();
        Raw.Mapping mended = new Raw.Mapping(List.of(), mapping.place());
        for (Key<?> key : keys) {
            List<Raw> written = written(key, mapping);
            List<Raw> values = written.isEmpty() ? perhaps(key, mapping) : written;
            boolean isNeeded = key.need() == Key.Need.REQUIRED || meant.contains(key.name());
            // What is only possible is there with one of the two stand-ins.
            boolean isPossible = !values.isEmpty() && standIn == StandIn.HARSH;
            if (written.isEmpty() && !isNeeded && !isPossible) {
                continue;
            }
            Raw first = values.isEmpty() ? mapping : values.get(0);
            Optional<?> value = written.isEmpty()
                    ? key.shape().standIn(first, standIn)
                    : Shape.readOrStandIn(key.shape(), first, standIn);
            if (values.size() > 1 || value.isEmpty()) {
                return Optional.empty();
            }
            given.put(key.name(), value.get());
            mended = mended.with(key.name(), first);
        }
        return agreeing(new Values(given, mended), standIn);
    }

    /** {@code values} with stand-ins where a choice is not made, or made more than once; nothing where more is wrong. */
    private Optional<Values> agreeing(Values values, StandIn standIn) {
        Map<String, Object> given = new HashMap<>();
        keys.forEach(key -> values.find(key).ifPresent(value -> given.put(key.name(), value)));
        Raw.Mapping mended = values.raw();
        for (Ways choice : ways) {
            if (isSettled(choice, values)) {
                continue;
            }
            Optional<Ways.Way> only = choice.only(mended).filter(way -> !isOrdered(way));
            Ways.Way way = only.orElse(choice.ways().get(0));
            Set<String> dropped = only.isPresent()
                    ? choice.notOf(way, mended)
                    : Set.copyOf(choice.keys().toList());
            given.keySet().removeAll(dropped);
            mended = mended.without(dropped);
            for (String name : way.must()) {
                if (!given.containsKey(name)) {
                    Shape<?> shape = Objects.requireNonNull(key(name)).shape();
                    shape.standIn(mended, standIn).ifPresent(value -> given.put(name, value));
                    mended = mended.with(name, mended);
                }
            }
        }
        Problems besides = new Problems();
        Values agreed = checked(mended, given, Set.of(), Context.top(besides));
        boolean isWhole = given.keySet().equals(names(mended));
        return besides.none() && isWhole ? Optional.of(agreed) : Optional.empty();
    }

    private static Set<String> names(Raw.Mapping mapping) {
        return mapping.entries().stream().map(Raw.Entry::key).collect(Collectors.toSet());
    }

    /** Whether the values of {@code way} may contradict each other. */
    private boolean isOrdered(Ways.Way way) {
        return orders.stream()
                .anyMatch(order -> way.must().contains(order.larger().name()));
    }

    /** Whether {@code values} say one thing of {@code choice}. */
    private boolean isSettled(Ways choice, Values values) {
        Problems problems = new Problems();
        Context context = Context.top(problems);
        choice.check(values.raw(), Set.of(), context);
        orders.stream()
                .filter(order -> choice.ways().stream()
                        .anyMatch(way -> way.must().contains(order.larger().name())))
                .forEach(order -> order.check(values, context));
        return problems.none();
    }

    /**
     * The values of unknown keys of {@code mapping} that may be meant for {@code wanted}: by their names, or by what they say where
     * the name is like no other.
     */
    public List<Raw> perhaps(Key<?> wanted, Raw.Mapping mapping) {
        return mapping.entries().stream()
                .filter(entry -> key(entry.key()) == null)
                .limit(MOST_UNKNOWN)
                .filter(entry -> Nearest.to(entry.key(), names())
                        .map(wanted.name()::equals)
                        .orElseGet(() -> fits(wanted.shape(), entry.value())))
                .map(Raw.Entry::value)
                .toList();
    }

    private static boolean fits(Shape<?> shape, Raw value) {
        boolean isGroup = value instanceof Raw.Mapping && !shape.sections().isEmpty();
        return isGroup || shape.read(value, Context.top(new Problems())).isPresent();
    }

    private static List<Raw> written(Key<?> key, Raw.Mapping mapping) {
        return mapping.entries().stream()
                .filter(entry -> entry.key().equals(key.name()))
                .map(Raw.Entry::value)
                .toList();
    }

    /** The keys that were probably meant by words that are none: to call them missing would be to complain twice. */
    private Set<String> meant(Collection<String> words) {
        return words.stream()
                .filter(word -> key(word) == null)
                .limit(MOST_UNKNOWN)
                .flatMap(word -> Nearest.to(word, names()).stream())
                .collect(Collectors.toSet());
    }

    private List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    /** Reports that {@code key} is missing in {@code mapping}. */
    public static void refuseMissing(Key<?> key, Raw.Mapping mapping, Context context) {
        String rule = "is missing; must be " + key.shape().allowed();
        context.problems().error(mapping.place(), context.pathTo(key.name()), "", rule, key.remedy());
    }

    /** Reports each entry of {@code mapping} that has the key of one before it. */
    public static void refuseSeconds(Raw.Mapping mapping, Context context) {
        Map<String, Raw.Entry> first = new HashMap<>();
        for (Raw.Entry entry : mapping.entries()) {
            Raw.Entry earlier = first.putIfAbsent(entry.key(), entry);
            if (earlier != null) {
                refuseSecond(entry, earlier, context);
            }
        }
    }

    /** Reports that {@code entry} has the key of one that stands before it. */
    private static void refuseSecond(Raw.Entry entry, Raw.Entry earlier, Context context) {
        refuse(entry, "is given twice, first in line " + earlier.place().line(), "Leave out one.", context);
    }

    private Map<String, Raw.Entry> entries(Raw.Mapping mapping, Context context) {
        Map<String, Raw.Entry> entries = new LinkedHashMap<>();
        for (Raw.Entry entry : mapping.entries()) {
            Raw.Entry earlier = entries.putIfAbsent(entry.key(), entry);
            if (earlier != null) {
                refuseSecond(entry, earlier, context);
            } else if (key(entry.key()) == null) {
                Interrupted.check("a scenario is read");
                refuseUnknown(entry, context);
                readAsMeant(entry, mapping, context);
            }
        }
        return entries;
    }

    /** Reports what is wrong within a group whose name is misspelt. */
    private void readAsMeant(Raw.Entry entry, Raw.Mapping mapping, Context context) {
        if (entry.value() instanceof Raw.Scalar) {
            return;
        }
        Nearest.to(entry.key(), names())
                .filter(name -> mapping.find(name).isEmpty())
                .map(name -> Objects.requireNonNull(key(name)))
                .filter(meant -> !meant.shape().sections().isEmpty())
                .ifPresent(meant -> meant.shape()
                        .read(entry.value(), context.named(entry.key()).withRemedy(meant.remedy())));
    }

    private void refuseUnknown(Raw.Entry entry, Context context) {
        Optional<String> now = FormerNames.now(context.pathTo(entry.key()));
        if (now.isPresent()) {
            refuse(entry, "is now called " + now.get(), "Write the new name.", context);
            return;
        }
        // One that is only counted needs no remedy, which takes long to find.
        String remedy = context.problems().isFull() ? "" : remedyForUnknown(entry);
        refuse(entry, "is not a known key" + (name.isEmpty() ? "" : " of " + name), remedy, context);
    }

    private String remedyForUnknown(Raw.Entry entry) {
        return Nearest.to(entry.key(), names())
                .map(nearest -> "Did you mean " + nearest + "?")
                .orElseGet(() -> REST_OF_A_NUMBER.matcher(entry.key()).matches()
                        ? "A comma ends the value before it: write decimals with a point, thousands without a comma,"
                                + " and a text that holds a comma in quotes."
                        : "Allowed here are: " + String.join(", ", names()) + ".");
    }

    private static void refuse(Raw.Entry entry, String rule, String remedy, Context context) {
        context.problems()
                .error(entry.place(), context.pathTo(entry.key()), entry.value().shown(), rule, remedy);
    }

    private @Nullable Key<?> key(String wanted) {
        return keys.stream()
                .filter(key -> key.name().equals(wanted))
                .findFirst()
                .orElse(null);
    }

    /** The keys; one that is put there replaces those that say the same in another way. */
    @Override
    public List<Part> parts(Optional<Raw> written) {
        Optional<Raw.Mapping> mapping =
                written.filter(raw -> raw instanceof Raw.Mapping).map(raw -> (Raw.Mapping) raw);
        return keys.stream()
                .map(key -> new Part(
                        List.of(key.name()),
                        key.meaning(),
                        key.shape(),
                        mapping.flatMap(given -> given.find(key.name())),
                        () -> key.fallbackValue().isPresent() && fits(key.name(), mapping) ? key.byDefault() : "",
                        raw -> put(mapping, key.name(), raw)))
                .toList();
    }

    /** Whether {@code key} goes with what is given, so that its default is of account. */
    private boolean fits(String key, Optional<Raw.Mapping> mapping) {
        return mapping.isEmpty() || ways.stream().allMatch(choice -> choice.allows(key, mapping.get()));
    }

    private Raw put(Optional<Raw.Mapping> mapping, String key, Raw value) {
        Set<String> replaced = ways.stream()
                .flatMap(choice -> choice.excludedBy(key, written(mapping)))
                .collect(Collectors.toSet());
        return mapping.orElseGet(() -> new Raw.Mapping(List.of(), value.place()))
                .without(replaced)
                .with(key, value);
    }

    /** An item may be called by the name that it gives itself, where it may give one. */
    @Override
    public Part item(Raw raw) {
        List<String> called = raw instanceof Raw.Mapping mapping && key(NAME) != null
                ? mapping.find(NAME).stream()
                        .map(name -> Text.inOneLine(name.shown()))
                        .toList()
                : List.of();
        return new Part(called, "", this, Optional.of(raw), UnaryOperator.identity());
    }

    private static Set<String> written(Optional<Raw.Mapping> mapping) {
        return mapping.map(given -> given.entries().stream().map(Raw.Entry::key).collect(Collectors.toSet()))
                .orElse(Set.of());
    }

    @Override
    public String allowed() {
        return "a group of keys";
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        return schemas.section(this);
    }

    @Override
    public List<Section> sections() {
        return List.of(this);
    }
}
