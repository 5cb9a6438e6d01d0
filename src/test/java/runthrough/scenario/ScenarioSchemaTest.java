package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schema that editors get, tried by a validator that knows nothing of this program. */
class ScenarioSchemaTest {

    private static final Path COMMITTED = Path.of("scenarios", "scenario.schema.json");

    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(ScenarioSchema.text());

    static List<Path> shipped() throws IOException {
        return ShippedScenariosTest.shipped();
    }

    /** What an editor would underline. The YAML is read by its library, not by our reader. */
    private static Set<ValidationMessage> underlined(String yaml) {
        Object value = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        JsonNode node = JsonMapper.builder().build().valueToTree(value);
        return SCHEMA.validate(node);
    }

    @Test
    void theCommittedSchemaIsTheOneThatTheKeysGive() throws IOException {
        Path fresh = Files.writeString(Path.of("target", "scenario.schema.json"), ScenarioSchema.text());

        assertThat(COMMITTED)
                .as("the keys have changed: copy %s to %s", fresh, COMMITTED)
                .hasSameTextualContentAs(fresh);
    }

    @Test
    void theSchemaIsAValidSchema() throws IOException {
        JsonSchema metaSchema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                .getSchema(com.networknt.schema.SchemaLocation.of("http://json-schema.org/draft-07/schema#"));

        assertThat(metaSchema.validate(JsonMapper.builder().build().readTree(ScenarioSchema.text())))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyShippedScenarioPasses(Path file) throws IOException {
        assertThat(underlined(Files.readString(file))).isEmpty();
    }

    @Test
    void theScenarioOfTheTestsPasses() {
        assertThat(underlined(Written.with())).isEmpty();
        assertThat(underlined(Written.with("results-in: us", "notes: [a, b]", "accumulator: none")))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.3 m/s2", "0.3 m/s^2", "0.3 m/s²", "0.3m/s2", ".3 m/s2", "3e-1 ft/min/s"})
    void everySpellingOfAUnitPasses(String acceleration) {
        assertThat(underlined(Written.with("entry: {top-speed: 90 m/min, acceleration: " + acceleration + "}")))
                .isEmpty();
    }

    @Test
    void aCoilMayBeCalledByANumber() {
        assertThat(underlined(
                        Written.with("coil: {name: 4711, thickness: 90 µm, width: 9 in, density: 7850 kg/m³, mass: 3"
                                + " short ton}")))
                .isEmpty();
    }

    /** Each of these is refused by the reader too. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        resluts-in: metric
        results-in: imperial
        process: {acceleration: 0.2 m/s2}
        process: {speed: 45}
        process: {speed: 45 m}
        process: {speed: -45 m/min}
        process: {speed: "45,5 m/min"}
        process: {speed: 45 mpm}
        entry: {uncoilers: 2}
        entry: {top-speed: 90 m/min, uncoilers: 0}
        entry: {top-speed: 90 m/min, uncoilers: 1.5}
        accumulator: {strands: 8}
        accumulator: {strands: 8, stroke: 9 m, capacity: 72 m}
        accumulator: nothing
        coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3}
        coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, length: 900 m, mass: 3 t}
        coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, length: {uniform: [900 m]}}
        coil-change: {join: [{join: 50}]}
        coil-change: {join: [{join: {constant: 5 s, every: 2, chance: 5 %}}]}
        coil-change: {join: [{join: {plus: 5 s}}]}
        coil-change: {join: [{fit up: 5 s, weld: 6 s}]}
        coil-change: {join: [{join: {weibull: [2 s, 5 s]}}]}
        coil-change: {join: [{join: 50 s}], reject: {}}
        practice: rethread
        run: {coil-changes: 10, time: 8 h}
        run: {seed: -1}
        coils: {schedule: coils.csv}
        """)
    void whatTheReaderRefusesIsUnderlined(String section) throws IOException {
        String yaml = Written.with(section);
        Path file = Files.writeString(Files.createTempFile("schema", ".yaml"), yaml);

        assertThat(underlined(yaml)).isNotEmpty();
        assertThat(ScenarioFile.open(file).read()).isInstanceOf(ScenarioReading.Refused.class);
        Files.delete(file);
    }

    @Test
    void everyPropertySaysWhatItMeans() throws IOException {
        JsonNode schema = JsonMapper.builder().build().readTree(ScenarioSchema.text());

        assertThat(schema.findValues("properties"))
                .isNotEmpty()
                .allSatisfy(properties -> properties.properties().forEach(property -> {
                    boolean isRule = property.getValue().has("required")
                            && !property.getValue().has("type");
                    boolean isPractice = property.getKey().equals("practice");
                    assertThat(isRule || isPractice || property.getValue().has("description"))
                            .as(property.getKey())
                            .isTrue();
                }));
    }
}
