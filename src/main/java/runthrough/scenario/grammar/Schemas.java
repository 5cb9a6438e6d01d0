package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import runthrough.quantity.Dimension;
import runthrough.quantity.Unit;

/**
 * Makes the parts of a JSON Schema (draft 7, the one that editors of YAML understand best). What occurs in many places is
 * made once and referred to.
 */
public final class Schemas {

    private static final String UNSIGNED = "([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]+)?";

    private static final String MINUTES_AND_SECONDS = "^[0-9]+:[0-5][0-9](\\.[0-9]+)?\\s*min$";

    private final Map<String, ObjectNode> definitions = new TreeMap<>();

    /** A schema that allows anything. */
    public ObjectNode any() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** A schema that allows values of a JSON type. */
    public ObjectNode type(String type) {
        return any().put("type", type);
    }

    /** A schema that allows what any of {@code schemas} allows. */
    public ObjectNode anyOf(ObjectNode... schemas) {
        ObjectNode schema = any();
        ArrayNode alternatives = schema.putArray("anyOf");
        for (ObjectNode alternative : schemas) {
            alternatives.add(alternative);
        }
        return schema;
    }

    /** A reference to what {@code make} makes, which is made once under {@code name}. */
    public ObjectNode shared(String name, Supplier<ObjectNode> make) {
        if (!definitions.containsKey(name)) {
            definitions.put(name, any());
            definitions.put(name, make.get());
        }
        return any().put("$ref", "#/definitions/" + name);
    }

    /** A number with a unit of {@code dimension}. */
    ObjectNode quantity(Dimension dimension, boolean mayBeNegative) {
        return shared((mayBeNegative ? "signed-" : "") + dimension.label().replace(' ', '-'), () -> {
            String units = dimension.units().stream()
                    .map(Unit::symbol)
                    .map(Schemas::spellings)
                    .collect(Collectors.joining("|"));
            ObjectNode schema = type("string");
            String number = "^" + (mayBeNegative ? "[+-]?" : "\\+?") + UNSIGNED + "\\s*(" + units + ")$";
            schema.put("pattern", dimension == Dimension.TIME ? number + "|" + MINUTES_AND_SECONDS : number);
            ArrayNode examples = schema.putArray("examples");
            dimension.examples().forEach(examples::add);
            return schema;
        });
    }

    /** What matches a unit's symbol in all its spellings, in the way that JavaScript reads regular expressions too. */
    private static String spellings(String symbol) {
        String quoted =
                Pattern.compile("[.*+?^${}()|\\[\\]\\\\/]").matcher(symbol).replaceAll("\\\\$0");
        return quoted.replaceAll("2$", "(\\\\^?2|²)")
                .replaceAll("3$", "(\\\\^?3|³)")
                .replaceAll("^um$", "[uµμ]m")
                .replace(" ", "\\s+");
    }

    /** An object with the keys of {@code section} and no others. */
    public ObjectNode section(Section section) {
        ObjectNode schema = type("object");
        schema.put("description", section.meaning());
        schema.put("additionalProperties", false);
        ObjectNode properties = schema.putObject("properties");
        for (Key<?> key : section.keys()) {
            properties.set(key.name(), property(key));
        }
        ArrayNode required = any().putArray("required");
        section.keys().stream().filter(key -> key.need() == Key.Need.REQUIRED).forEach(key -> required.add(key.name()));
        if (!required.isEmpty()) {
            schema.set("required", required);
        }
        ArrayNode rules = any().putArray("allOf");
        section.ways().stream().map(this::choice).forEach(rules::add);
        if (!rules.isEmpty()) {
            schema.set("allOf", rules);
        }
        return schema;
    }

    private ObjectNode property(Key<?> key) {
        ObjectNode property = key.shape().schema(this);
        String byDefault = key.byDefault().isEmpty() ? "" : " Default: " + key.byDefault() + ".";
        String example = key.example().isEmpty() ? "" : " Example: " + key.example() + ".";
        property.put("description", capital(key.meaning()) + "." + example + byDefault);
        return property;
    }

    /** Exactly one way taken in full, or none where none is needed. */
    private ObjectNode choice(Ways ways) {
        ObjectNode schema = any();
        ArrayNode allowed = schema.putArray("oneOf");
        for (Ways.Way way : ways.ways()) {
            allowed.add(requiring(way));
        }
        if (!ways.required()) {
            ArrayNode touched = any().putArray("anyOf");
            ways.ways().forEach(way -> way.must().forEach(key -> touched.add(requiring(Ways.Way.of(key)))));
            ObjectNode none = any();
            none.set("not", any().set("anyOf", touched));
            allowed.add(none);
        }
        return schema;
    }

    private ObjectNode requiring(Ways.Way way) {
        ObjectNode schema = any();
        ArrayNode required = schema.putArray("required");
        way.must().forEach(required::add);
        way.needs()
                .forEach((key, needed) ->
                        schema.withObject("/dependencies").putArray(key).add(needed));
        return schema;
    }

    /** The whole schema: {@code root} with everything it refers to. */
    public ObjectNode document(Section root, String title) {
        ObjectNode schema = any();
        schema.put("$schema", "http://json-schema.org/draft-07/schema#");
        schema.put("title", title);
        schema.setAll(section(root));
        ObjectNode shared = schema.putObject("definitions");
        definitions.forEach(shared::set);
        return schema;
    }

    private static String capital(@Nullable String words) {
        return words == null || words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
