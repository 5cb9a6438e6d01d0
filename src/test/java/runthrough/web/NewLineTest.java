package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Lines made from a few answers. */
class NewLineTest extends ServedPage {
    static final String ASSUMED = "assumption (common practice, no source)";
    static final String STATED = "stated on the page";

    static Stream<Arguments> offered() {
        return NewLine.kinds().stream()
                .flatMap(kind -> NewLine.practices().stream().map(practice -> Arguments.of(kind.name(), practice)));
    }

    private static ObjectNode asked(String kind, String practice, String units, Object changes) {
        return JSON.createObjectNode()
                .put("kind", kind)
                .put("practice", practice)
                .put("units", units)
                .set("changes", JSON.valueToTree(changes));
    }

    @ParameterizedTest
    @MethodSource("offered")
    void everyLineThatIsOfferedGivesAVerdictWithoutAWarningAndSaysThatItIsAssumed(String kind, String practice)
            throws Exception {
        JsonNode made = ask("/api/new", asked(kind, practice, "metric", List.of()));

        assertThat(made.at("/line/problems")).isEmpty();
        JsonNode answer = ask("/api/answer", body(made.get("text").asText()));
        assertThat(answer.get("word").asText()).isIn("STOPS", "RUNS THROUGH", "MARGINAL");
        assertThat(answer.get("warnings")).isEmpty();
        assertThat(made.at("/line/fields"))
                .filteredOn(field -> !field.get("group").asText().equals("figures")
                        && field.get("written")
                                .asText()
                                .equals(field.get("shown").asText())
                        && made.get("text")
                                .asText()
                                .contains(field.get("written").asText()))
                .filteredOn(field -> !field.get("from").asText().isEmpty())
                .isNotEmpty()
                .allMatch(field -> field.get("from").asText().equals(ASSUMED)
                        && field.get("assumed").asBoolean());
    }

    /** A width, a speed of the whole line, and measured times of an element; what was left is still assumed. */
    @Test
    void whatIsStatedIsNoLongerAssumed() throws Exception {
        JsonNode made = ask("/api/new", asked("tube-mill", "join with accumulator", "us", JSON.readTree("""
                        [{"path": "coil.width", "value": "10 in"}, {"path": "rated-speed", "value": "150 ft/min"},
                         {"path": "coil-change.join[1]", "time": "observed", "value": "[55 s, 60 s, 71 s]"}]""")));

        assertThat(made.get("text").asText())
                .contains("results-in: us", "width: 10 in", "make the joint: {observed: [55 s, 60 s, 71 s]}")
                .contains("coil.width: " + STATED, "process.speed: " + STATED)
                .contains("coil-change.join.make the joint: " + STATED, "coil: " + ASSUMED);
        assertThat(made.at("/line/work/join/0/assumed").asBoolean()).isFalse();
        assertThat(made.at("/line/work/join/0/values/0").asText()).isEqualTo("55 s, 60 s, 71 s");
        assertThat(made.at("/line/work/tail/0/assumed").asBoolean()).isTrue();
    }

    /** How many coil changes should run through is asked, too; what it is worth is in the file only where it was said. */
    @Test
    void targetAndMoneyMayBeStated() throws Exception {
        JsonNode usual = ask("/api/new", asked("tube-mill", "join with accumulator", "metric", List.of()));
        JsonNode made = ask("/api/new", asked("tube-mill", "join with accumulator", "metric", JSON.readTree("""
                        [{"path": "run.target", "value": "99.5 %"},
                         {"path": "money", "value": "{currency: EUR, line-hour: 900, rate: 8 %}"}]""")));

        assertThat(usual.get("text").asText())
                .contains("run.target: " + ASSUMED)
                .doesNotContain("money");
        assertThat(made.at("/line/problems")).isEmpty();
        assertThat(made.get("text").asText())
                .contains("target: 99.5 %", "run.target: " + STATED, "line-hour: 900")
                .doesNotContain("run.target: " + ASSUMED);
        assertThat(ask("/api/new", asked("tube-mill", "rethread", "metric", JSON.readTree("""
                        [{"path": "money", "value": "{currency: EUR, line-hour: '', rate: 8 %}"}]""")))
                        .at("/line/problems/0/message")
                        .asText())
                .contains("must be a number");
    }

    /** The origin of a work element that is removed goes with it. */
    @Test
    void whatIsRemovedIsNotSaidToComeFromAnywhere() throws Exception {
        ObjectNode remove = body(shipped("tube-line"));
        remove.putArray("changes").addObject().put("path", "coil-change.join[2]");

        JsonNode made = ask("/api/edit", remove);

        assertThat(made.at("/line/problems")).isEmpty();
        assertThat(made.get("text").asText())
                .contains("coil-change: assumption")
                .doesNotContain("measured, n = 40");
    }

    @Test
    void aKindThatIsNotOfferedIsRefused() throws Exception {
        assertThat(post("/api/new", asked("../tube-line", "rethread", "metric", List.of()))
                        .statusCode())
                .isEqualTo(400);
    }
}
