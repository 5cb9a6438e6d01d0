package runthrough.report.verdict;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.RecordComponent;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Makes the JSON Schema (draft 7) of the verdict from the records that are its shape. */
final class VerdictSchema {
    private final Map<String, ObjectNode> definitions = new TreeMap<>();

    ObjectNode schema() {
        ObjectNode schema = node().put("$schema", "http://json-schema.org/draft-07/schema#")
                .put("title", "Verdict of runthrough, shape " + VerdictDocument.FORMAT)
                .put(
                        "description",
                        "Names carry SI units: _m metres, _s seconds, _kg kilograms, _m_per_s metres per second; _per_8_h is "
                                + "per eight hours of simulated time. Shares are from 0 to 1. What is not known, not finite or "
                                + "does not apply is null.");
        schema.setAll(object(VerdictDocument.class));
        ((ObjectNode) schema.at("/properties/format")).put("const", VerdictDocument.FORMAT);
        ObjectNode shared = schema.putObject("definitions");
        definitions.forEach(shared::set);
        return schema;
    }

    private ObjectNode object(Class<?> type) {
        ObjectNode schema = node().put("type", "object");
        ObjectNode properties = schema.putObject("properties");
        for (RecordComponent component : type.getRecordComponents()) {
            ObjectNode property = value(component.getAnnotatedType());
            String description =
                    annotation(type, component, JsonPropertyDescription.class).value();
            ObjectNode described = node().put("description", description);
            described.setAll(property);
            properties.set(name(type, component), described);
        }
        properties.fieldNames().forEachRemaining(schema.withArray("required")::add);
        return schema.put("additionalProperties", false);
    }

    private ObjectNode value(AnnotatedType type) {
        ObjectNode schema = plain(type);
        if (type.isAnnotationPresent(Nullable.class)) {
            ObjectNode either = node();
            either.putArray("anyOf").add(schema).add(node().put("type", "null"));
            return either;
        }
        return schema;
    }

    private ObjectNode plain(AnnotatedType type) {
        if (type instanceof AnnotatedParameterizedType list) {
            ObjectNode schema = node().put("type", "array");
            schema.set("items", value(list.getAnnotatedActualTypeArguments()[0]));
            return schema;
        }
        Class<?> raw = (Class<?>) type.getType();
        if (raw.isRecord()) {
            String name = raw.getSimpleName();
            if (!definitions.containsKey(name)) {
                definitions.put(name, node());
                definitions.put(name, object(raw));
            }
            return node().put("$ref", "#/definitions/" + name);
        }
        return node().put("type", jsonType(raw));
    }

    private static String jsonType(Class<?> type) {
        return switch (type.getSimpleName()) {
            case "String" -> "string";
            case "boolean" -> "boolean";
            case "int", "long", "Integer", "Long" -> "integer";
            case "double", "Double" -> "number";
            default -> throw new IllegalArgumentException("no JSON type for " + type);
        };
    }

    private static String name(Class<?> type, RecordComponent component) {
        try {
            JsonProperty given = type.getDeclaredField(component.getName()).getAnnotation(JsonProperty.class);
            return given == null ? component.getName() : given.value();
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Annotations on components are kept on the fields they become. */
    private static JsonPropertyDescription annotation(
            Class<?> type, RecordComponent component, Class<JsonPropertyDescription> annotation) {
        try {
            return Objects.requireNonNull(
                    type.getDeclaredField(component.getName()).getAnnotation(annotation),
                    () -> type.getSimpleName() + "." + component.getName() + " without a description");
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }
}
