package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import runthrough.plant.check.LinePart;

/** Messages about a line name its parts; in a scenario each is a key of that path, so that a message finds its place. */
class LinePartTest {

    @ParameterizedTest
    @EnumSource(LinePart.class)
    void everyPartIsAKeyOfTheScenario(LinePart part) throws IOException {
        JsonNode schema = new ObjectMapper().readTree(Files.readString(Path.of("scenarios/scenario.schema.json")));
        Stream<JsonNode> found = Stream.of(schema);
        for (String key : part.path().split("\\.", -1)) {
            found = found.flatMap(node -> inside(schema, node))
                    .filter(node -> node.has(key))
                    .map(node -> node.get(key));
        }

        assertThat(found).isNotEmpty();
    }

    /** The properties that {@code node} may have, in whichever of its forms. */
    private static Stream<JsonNode> inside(JsonNode schema, JsonNode node) {
        Stream<JsonNode> own = node.has("properties") ? Stream.of(node.get("properties")) : Stream.of();
        Stream<JsonNode> referred = node.has("$ref")
                ? inside(schema, schema.at(node.get("$ref").asText().substring(1)))
                : Stream.of();
        Stream<JsonNode> forms = Stream.of("anyOf", "oneOf", "allOf")
                .filter(node::has)
                .flatMap(form -> StreamSupport.stream(node.get(form).spliterator(), false))
                .flatMap(form -> inside(schema, form));
        return Stream.of(own, referred, forms).flatMap(all -> all);
    }
}
