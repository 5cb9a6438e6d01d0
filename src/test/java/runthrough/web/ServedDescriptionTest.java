package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The description of the server's interface is true: every route is in it and no other, and the server does what it says. */
class ServedDescriptionTest extends ServedPage {
    private static final JsonNode DESCRIPTION = read();

    private static JsonNode read() {
        return JSON.valueToTree(
                new Load(LoadSettings.builder().build()).loadFromString(ShippedLines.page("openapi.yaml")));
    }

    private static Stream<String> paths() {
        return StreamSupport.stream(
                ((Iterable<String>) () -> DESCRIPTION.get("paths").fieldNames()).spliterator(), false);
    }

    static Stream<String> posted() {
        return paths().filter(path -> operation(path, "post").isObject());
    }

    private static JsonNode operation(String path, String method) {
        return DESCRIPTION.get("paths").get(path).path(method);
    }

    /** A path that names a file stands for all whose names fit. */
    private static boolean covers(String path, String route) {
        JsonNode pattern = DESCRIPTION
                .get("paths")
                .get(path)
                .path("parameters")
                .path(0)
                .path("schema")
                .path("pattern");
        String start = path.replace("{file}", "");
        return path.equals(route)
                || (pattern.isTextual()
                        && route.startsWith(start)
                        && route.substring(start.length()).matches(pattern.asText()));
    }

    @Test
    void everyRouteIsDescribedAndNoOther() {
        List<String> routes = page.routes();

        assertThat(routes).allMatch(route -> paths().anyMatch(path -> fits(path, route)));
        assertThat(paths()).allMatch(path -> routes.stream().anyMatch(route -> fits(path, route)));
    }

    private static boolean fits(String path, String route) {
        int blank = route.indexOf(" ");
        return covers(path, route.substring(blank + 1))
                && operation(path, route.substring(0, blank).toLowerCase(Locale.ROOT))
                        .isObject();
    }

    @Test
    void whatIsFetchedComesInTheMediaTypeThatIsDescribed() throws Exception {
        for (String route : page.routes()) {
            if (route.startsWith("GET ")) {
                String address = route.substring(4);
                HttpResponse<byte[]> answer = send(to(address));
                String path =
                        paths().filter(one -> fits(one, route)).findFirst().orElseThrow();
                assertAnswer(operation(path, "get"), answer, route);
            }
        }
    }

    @Test
    void allThatMayBeAskedIsDescribed() {
        assertThat(schema("Question").get("properties").fieldNames())
                .toIterable()
                .containsExactlyElementsOf(Stream.of(PageRequest.class.getRecordComponents())
                        .map(RecordComponent::getName)
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("posted")
    void whatIsPostedIsAnsweredAsDescribed(String path) throws Exception {
        JsonNode operation = operation(path, "post");
        HttpResponse<byte[]> answer = post(path, question(path));

        assertAnswer(operation, answer, path);
        if (operation.has("x-result")) {
            assertValue(operation.get("x-result"), result(JSON.readTree(answer.body())), path);
        }
    }

    @ParameterizedTest
    @MethodSource("posted")
    void whatIsRefusedIsRefusedAsDescribed(String path) throws Exception {
        for (String needed : required(path)) {
            ObjectNode without = question(path).deepCopy();
            without.remove(needed);
            assertRefused(path, 400, post(path, without));
        }
        assertRefused(path, 400, post(path, question(path).deepCopy().put("other", 1)));
        assertRefused(
                path,
                415,
                send(to(path).header("Content-Type", "text/plain").POST(HttpRequest.BodyPublishers.ofString("{}"))));
        assertRefused(
                path,
                403,
                send(to(path).header("Content-Type", "application/json")
                        .header("Origin", "http://example.test")
                        .POST(HttpRequest.BodyPublishers.ofString("{}"))));
        boolean needsLine = required(path).contains("text");
        HttpResponse<byte[]> ofNoLine = post(path, spoiled(path));
        if (operation(path, "post").get("responses").has("422")) {
            assertRefused(path, 422, ofNoLine);
        } else if (operation(path, "post").get("responses").has("404")) {
            assertRefused(path, 404, post(path, JSON.createObjectNode().put("id", "none")));
        } else if (needsLine) {
            assertThat(ofNoLine.statusCode()).as(path).isEqualTo(200);
        }
    }

    /** A question about a line that cannot be run, or about a sheet that holds no times. */
    private static ObjectNode spoiled(String path) throws Exception {
        ObjectNode question = question(path).deepCopy();
        if (required(path).contains("text")) {
            return question.put("text", "title: no line");
        }
        if (question.has("file")) {
            ((ObjectNode) question.get("file")).put("text", "none");
        }
        return question;
    }

    private static List<String> required(String path) {
        JsonNode schema = operation(path, "post")
                .at("/requestBody/content")
                .path("application/json")
                .path("schema");
        return StreamSupport.stream(
                        schema.path("allOf").path(1).path("required").spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }

    /** With all that is required and nothing else: the examples of the description, a line, a file, a job. */
    private static ObjectNode question(String path) throws Exception {
        ObjectNode question = JSON.createObjectNode();
        for (String name : required(path)) {
            switch (name) {
                case "text" ->
                    question.put("text", shipped(path.endsWith("uncertainty") ? "tube-line-measured" : "tube-line"));
                case "file" -> question.set("file", file(path));
                case "id" ->
                    question.set(
                            "id",
                            ask("/api/job/curve", body(shipped("tube-line"))).get("id"));
                default ->
                    question.set(
                            name, schema("Question").at("/properties").get(name).get("example"));
            }
        }
        return question;
    }

    private static ObjectNode file(String path) throws IOException {
        String name = path.endsWith("log") ? "tube-line-log.csv" : "tube-line-times.csv";
        return JSON.createObjectNode().put("name", name).put("text", Files.readString(Path.of("scenarios", name)));
    }

    private static JsonNode result(JsonNode job) throws Exception {
        while (true) {
            JsonNode state = ask("/api/job", job);
            assertThat(state.get("failed").isNull()).as(state.toString()).isTrue();
            if (!state.get("result").isNull()) {
                return state.get("result");
            }
            Thread.sleep(50);
        }
    }

    private static void assertAnswer(JsonNode operation, HttpResponse<byte[]> answer, String at) throws IOException {
        assertThat(answer.statusCode())
                .as(at + " " + new String(answer.body(), StandardCharsets.UTF_8))
                .isEqualTo(200);
        JsonNode content = operation.at("/responses/200/content");
        String type = answer.headers().firstValue("Content-Type").orElseThrow().replaceFirst(";.*", "");
        assertThat(content.fieldNames()).toIterable().as(at).containsAnyOf(type, "*/*");
        if (type.equals("application/json")) {
            assertValue(content.get(type).get("schema"), JSON.readTree(answer.body()), at);
        }
    }

    private static void assertRefused(String path, int status, HttpResponse<byte[]> answer) throws IOException {
        assertThat(answer.statusCode()).as(path).isEqualTo(status);
        JsonNode responses = operation(path, "post").get("responses");
        String code = Integer.toString(status);
        JsonNode said = resolved(responses.has(code) ? responses.get(code) : responses.get("default"));
        assertThat(responses.has(code) || status == 403 || status == 415)
                .as(path + " " + status)
                .isTrue();
        assertValue(said.at("/content").get("application/json").get("schema"), JSON.readTree(answer.body()), path);
    }

    // ---- values against schemas
    // -------------------------------------------------------------------------------------

    private static JsonNode schema(String name) {
        return DESCRIPTION.at("/components/schemas/" + name);
    }

    private static JsonNode resolved(JsonNode schema) {
        return schema.has("$ref") ? DESCRIPTION.at(schema.get("$ref").asText().substring(1)) : schema;
    }

    private static void assertValue(JsonNode described, JsonNode value, String at) {
        JsonNode schema = resolved(described);
        assertThat(schema.isObject()).as(at + " is described").isTrue();
        if (schema.has("anyOf")) {
            if (!value.isNull()) {
                assertValue(schema.get("anyOf").get(0), value, at);
            }
            return;
        }
        if (schema.has("type")) {
            assertThat(types(schema)).as(at + " = " + value).contains(type(value, types(schema)));
        }
        if (schema.has("enum")) {
            assertThat(schema.get("enum")).as(at).contains(value);
        }
        value.properties().forEach(member -> {
            JsonNode known = schema.path("properties").path(member.getKey());
            JsonNode others = schema.path("additionalProperties");
            if (schema.has("type")) {
                assertValue(known.isMissingNode() ? others : known, member.getValue(), at + "." + member.getKey());
            }
        });
        schema.path("required")
                .forEach(name ->
                        assertThat(value.has(name.asText())).as(at + "." + name).isTrue());
        if (value.isArray() && schema.has("items")) {
            value.forEach(item -> assertValue(schema.get("items"), item, at + "[]"));
        }
    }

    private static List<String> types(JsonNode schema) {
        JsonNode type = schema.get("type");
        return type.isTextual()
                ? List.of(type.asText())
                : StreamSupport.stream(type.spliterator(), false)
                        .map(JsonNode::asText)
                        .toList();
    }

    /** A whole number is a number, too. */
    private static String type(JsonNode value, List<String> wanted) {
        if (value.isIntegralNumber()) {
            return wanted.contains("integer") ? "integer" : "number";
        }
        return switch (value.getNodeType()) {
            case OBJECT -> "object";
            case ARRAY -> "array";
            case STRING -> "string";
            case NUMBER -> "number";
            case BOOLEAN -> "boolean";
            default -> "null";
        };
    }
}
