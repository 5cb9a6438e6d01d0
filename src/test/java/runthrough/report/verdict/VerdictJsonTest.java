package runthrough.report.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Distribution;
import runthrough.quantity.UnitSystem;
import runthrough.report.write.JsonWriter;

class VerdictJsonTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Test
    void namesItsShapeFirst() {
        assertThat(json(Invented.result(Invented.rethread())))
                .startsWith("{\n  \"format\" : \"runthrough-verdict/3\",\n");
    }

    @Test
    void numbersAreSiWhateverUnitsTheUserReads() throws IOException {
        RunThroughResult feet = Invented.result(
                Invented.request("x", Invented.line(Distribution.constant(25)), UnitSystem.US_CUSTOMARY, 0.99));
        JsonNode verdict = MAPPER.readTree(json(feet));
        // Drawn: 0.75 * 73 + 0.75^2 / 0.8 + 0.75^2 / 0.6 = 56.390625 m.
        assertThat(verdict.at("/hand_calculation/strip_drawn_m").asDouble()).isCloseTo(56.390625, within(1e-9));
        assertThat(verdict.at("/storage/strip_drawn_m/p50").asDouble()).isCloseTo(56.390625, within(1e-6));
        assertThat(verdict.at("/hand_calculation/process_speed_m_per_s").asDouble())
                .isEqualTo(0.75);
        assertThat(verdict.at("/joint/cycle_time_s/p95").asDouble()).isCloseTo(73, within(1e-6));
    }

    @Test
    void holdsWhatWasAskedAndWhereItComesFrom() throws IOException {
        JsonNode verdict = MAPPER.readTree(json(Invented.result(Invented.rethread())));
        assertThat(verdict.at("/scenario/sha256").asText()).isEqualTo(Invented.FINGERPRINT);
        assertThat(verdict.at("/practice").asText()).isEqualTo("rethread");
        assertThat(verdict.at("/scenario/seed").asLong()).isEqualTo(7);
        assertThat(verdict.at("/scenario/coil_changes").asInt()).isEqualTo(40);
        assertThat(verdict.at("/scenario/duration_s").isNull()).isTrue();
        assertThat(verdict.at("/scenario/date").isNull()).isTrue();
        assertThat(verdict.at("/program").asText()).isEqualTo("runthrough 0.1.0");
    }

    @Test
    void whatDoesNotApplyIsNull() throws IOException {
        JsonNode verdict = MAPPER.readTree(json(Invented.result(Invented.rethread())));
        assertThat(verdict.get("storage").isNull()).isTrue();
        assertThat(verdict.get("margin_at_target").isNull()).isTrue();
        assertThat(verdict.at("/hand_calculation/limiting_factor").isNull()).isTrue();
    }

    @Test
    void infinityAndNotANumberAreNull() throws IOException {
        // Nothing is random, so there is no interval; the accumulator sets no limit to emptying.
        String text = json(Invented.result(Invented.line(Distribution.constant(25))));
        assertThat(text).doesNotContain("NaN").doesNotContain("Infinity");
        assertThat(MAPPER.readTree(text).at("/share_run_through/interval_low").isNull())
                .isTrue();
    }

    @Test
    void sameResultGivesTheSameBytes() {
        assertThat(json(Invented.result(Invented.line(Distribution.lognormal(30, 9)))))
                .isEqualTo(json(Invented.result(Invented.line(Distribution.lognormal(30, 9)))));
    }

    @Test
    void givesShiftsPassagesBreaksAndBothWaits() throws IOException {
        // Rule CREW-17. The waits as in ShiftsAndLossesTest: in the first night 399 s for people.
        JsonNode verdict = MAPPER.readTree(json(Invented.result(Invented.inShifts())));
        assertThat(verdict.at("/shifts/0/name").asText()).isEqualTo("day");
        assertThat(verdict.at("/shifts/1/means/waiting_for_people_s/mean").asDouble())
                .isPositive();
        assertThat(verdict.at("/shifts/0/coil_changes/total").asLong()
                        + verdict.at("/shifts/1/coil_changes/total").asLong())
                .isEqualTo(200);
        assertThat(verdict.at("/joint/waiting_for_people_s/greatest").asDouble())
                .isPositive();
        assertThat(verdict.at("/joint_passages/share/mean").asDouble()).isPositive();
        assertThat(verdict.at("/joint_breaks/repair_s_per_8_h/mean").asDouble()).isPositive();
        // Two people, day and night.
        assertThat(verdict.at("/output/paid_s_per_8_h/mean").asDouble()).isCloseTo(2 * 28_800, within(1e-6));
        assertThat(verdict.at("/hand_calculation/without_stop/joint_cycle_time_s/given")
                        .asDouble())
                .isGreaterThan(verdict.at("/hand_calculation/without_slowing/joint_cycle_time_s/given")
                        .asDouble());
    }

    static List<RunThroughResult> results() {
        return List.of(
                Invented.result(Invented.line(Distribution.lognormal(36, 9))),
                Invented.result(Invented.line(Distribution.constant(25))),
                Invented.result(Invented.rethread()),
                Invented.result(Invented.inShifts()),
                Invented.result(Invented.withoutAccumulator()));
    }

    @ParameterizedTest
    @MethodSource("results")
    void everyFieldIsDescribedInTheSchema(RunThroughResult result) throws IOException {
        JsonNode schema = MAPPER.readTree(JsonWriter.schema(VerdictAnswer.FORMAT));
        describes(schema, schema, MAPPER.readTree(json(result)), "");
    }

    private static void describes(JsonNode schema, JsonNode part, JsonNode value, String path) {
        JsonNode described = alternative(schema, part, value);
        assertThat(described.path("type").asText()).as("type of " + path).isEqualTo(type(value));
        if (value.isObject()) {
            assertThat(described.path("additionalProperties").asBoolean(true)).isFalse();
            assertThat(described.path("required"))
                    .as("fields of " + path)
                    .extracting(JsonNode::asText)
                    .containsExactlyElementsOf(
                            value.properties().stream().map(Map.Entry::getKey).toList());
            value.properties().forEach(field -> {
                JsonNode property = described.at("/properties/" + field.getKey());
                String where = path + "/" + field.getKey();
                assertThat(property.path("description").asText()).as(where).isNotEmpty();
                describes(schema, property, field.getValue(), where);
            });
        }
        value.elements().forEachRemaining(item -> {
            if (value.isArray()) {
                describes(schema, described.path("items"), item, path + "[]");
            }
        });
    }

    /** What the schema says of a value that may also be null. */
    private static JsonNode alternative(JsonNode schema, JsonNode part, JsonNode value) {
        if (!part.has("anyOf")) {
            return resolved(schema, part);
        }
        JsonNode last = part.at("/anyOf/1");
        assertThat(last.path("type").asText()).isEqualTo("null");
        return value.isNull() ? last : resolved(schema, part.at("/anyOf/0"));
    }

    private static String type(JsonNode value) {
        return switch (value.getNodeType()) {
            case STRING -> "string";
            case BOOLEAN -> "boolean";
            case NULL -> "null";
            case ARRAY -> "array";
            case OBJECT -> "object";
            default -> value.isIntegralNumber() ? "integer" : "number";
        };
    }

    private static JsonNode resolved(JsonNode schema, JsonNode part) {
        return part.has("$ref") ? schema.at(part.get("$ref").asText().substring(1)) : part;
    }

    private static String json(RunThroughResult result) {
        return JsonWriter.render(VerdictAnswer.inWords(result));
    }
}
