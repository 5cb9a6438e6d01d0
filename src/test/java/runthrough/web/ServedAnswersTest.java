package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the server answers about a line. */
class ServedAnswersTest extends ServedPage {

    @Test
    void theSameTextGivesTheSameAnswer() throws IOException, InterruptedException {
        ObjectNode body = body(shipped("stamping-joiner")).put("effort", 1);
        ObjectNode inOtherWords = body.deepCopy().put("name", "other");

        assertThat(post("/api/answer", body).body())
                .isEqualTo(post("/api/answer", body).body())
                .isEqualTo(post("/api/answer", inOtherWords).body());
    }

    @Test
    void howOftenIsAllowedStandsByItself() throws IOException, InterruptedException {
        assertThat(ask("/api/answer", body(shipped("tube-line"))).get("allowed").asText())
                .isEqualTo("1 in 200");
        assertThat(ask("/api/answer", body(shipped("perforating-line")))
                        .get("allowed")
                        .asText())
                .isEmpty();
    }

    @Test
    void moreEffortNarrowsTheInterval() throws IOException, InterruptedException {
        ObjectNode body = body(shipped("stamping-joiner"));

        JsonNode quick = ask("/api/answer", body.deepCopy().put("effort", 0)).get("share");
        JsonNode sure = ask("/api/answer", body.deepCopy().put("effort", 2)).get("share");

        assertThat(sure.get("high").asDouble() - sure.get("low").asDouble())
                .isLessThan((quick.get("high").asDouble() - quick.get("low").asDouble()) / 2);
    }

    /** Rules LEVER-4 and LEVER-9. */
    @ParameterizedTest
    @ValueSource(strings = {"tube-line", "tube-line-measured", "stamping-joiner", "galvanising-line", "slitter"})
    void whatWouldFixALineFixesIt(String name) throws IOException, InterruptedException {
        assertThat(eachMeets(shipped(name))).hasSizeGreaterThanOrEqualTo(2);
    }

    /** Sets a line to each of its fixes, and returns what they say. */
    private static List<String> eachMeets(String text) throws IOException, InterruptedException {
        List<String> said = new ArrayList<>();
        for (JsonNode fix : done("fixes", body(text)).get("fixes")) {
            String words = fix.get("words").asText();
            said.add(words);
            assertThat(words).doesNotContainPattern(" (\\S+ \\S+), instead of \\1 ");
            assertThat(fix.get("changes")).as(words).isNotEmpty();
            ObjectNode edit = body(text);
            edit.set("changes", fix.get("changes"));
            JsonNode fixed = ask("/api/edit", edit);
            assertThat(fixed.at("/line/problems")).as(words).isEmpty();
            assertThat(ask("/api/answer", body(fixed.get("text").asText()).put("effort", 2))
                            .get("style")
                            .asText())
                    .as(words)
                    .isIn("runs-through", "marginal");
        }
        return said;
    }

    /** Rejects on every n-th joint, shifts without names, and seconds that are off every pass already. */
    @Test
    void whatWouldFixALineFixesIt_howeverItIsDescribed() throws IOException, InterruptedException {
        String galvanising = shipped("galvanising-line").replaceAll("name: (early|late|night), ", "");
        String rejects = shipped("stamping-joiner").replace("reject: {chance: 3 %}", "reject: {every: 30}");
        String quick = shipped("tube-line-measured").replace("join-shorter-by: 0 s", "join-shorter-by: 10 s");

        assertThat(eachMeets(galvanising)).anyMatch(words -> words.startsWith("A crew of 4"));
        assertThat(eachMeets(rejects)).anyMatch(words -> words.startsWith("Rejects"));
        assertThat(eachMeets(quick)).anyMatch(words -> words.contains("more on every pass"));
    }

    private static JsonNode done(String kind, ObjectNode body) throws IOException, InterruptedException {
        String id = ask("/api/job/" + kind, body).get("id").asText();
        while (true) {
            JsonNode state = ask("/api/job", JSON.createObjectNode().put("id", id));
            assertThat(state.get("failed").isNull()).as(state.toString()).isTrue();
            if (!state.get("result").isNull()) {
                return state.get("result");
            }
            Thread.sleep(100);
        }
    }

    @Test
    void theCurveOfCapacitiesReachesTheTarget() throws IOException, InterruptedException {
        JsonNode curve = done("curve", body(shipped("tube-line")));

        assertThat(curve.get("points").size()).isGreaterThan(5);
        assertThat(curve.get("words").asText()).contains("The target takes");
    }

    @Test
    void aMapIsDrawnOverTwoNumbersOfTheLine() throws IOException, InterruptedException {
        JsonNode map =
                done("map", body(shipped("tube-line")).put("x", "rated-speed").put("y", "usable-capacity"));

        assertThat(map.get("svg").asText()).contains("<svg").doesNotContain("<script");
        assertThat(map.get("words").asText()).contains("The target of 99.5 %");
    }

    /** A map has fewer replications than the answer, but of the line as it is both say the same. */
    @Test
    void theMapSaysOfTheLineAsItIsWhatTheAnswerSays() throws IOException, InterruptedException {
        String text = shipped("stamping-joiner");
        double share = ask("/api/answer", body(text).put("effort", 2))
                .at("/share/mean")
                .asDouble();

        JsonNode map = done("map", body(text).put("x", "rated-speed").put("y", "usable-capacity"));

        assertThat(map.get("words").asText())
                .contains(String.format(Locale.ROOT, "%.1f %% (95 %% interval", 100 * share));
    }

    @Test
    void aMapOverWhatIsNotThereIsRefused() throws IOException, InterruptedException {
        assertThat(failure(
                        "map",
                        body(shipped("tube-line")).put("x", "rated-speed").put("y", "no.such")))
                .contains("no.such");
    }

    /** What is enough for all coil changes, no run can show; whether all ran through, and what that is worth, it can. */
    @Test
    void aTargetOfAllIsRefusedByThoseThatLookForWhatIsEnoughForIt() throws IOException, InterruptedException {
        String all = shipped("tube-line").replaceFirst("target: [0-9.]+ %", "target: 100 %");

        for (String kind : List.of("size", "speeds", "limits")) {
            assertThat(failure(kind, body(all)))
                    .startsWith("target = 100 %; must be more than 0 % and less than 100 %.");
        }
        assertThat(done("compare", body(all)).isEmpty()).isFalse();
    }

    private static String failure(String kind, ObjectNode body) throws IOException, InterruptedException {
        JsonNode begun = ask("/api/job/" + kind, body);
        JsonNode state;
        do {
            state = ask("/api/job", begun);
            assertThat(state.get("result").isNull()).as(state.toString()).isTrue();
        } while (state.get("failed").isNull());
        return state.get("failed").asText();
    }

    /** As the command compare does: what is misspelt is not left out without a word. */
    @ParameterizedTest
    @ValueSource(strings = {"compare", "document"})
    void alternativesThatAreWrongAreNotLeftOut(String kind) throws IOException, InterruptedException {
        String text = shipped("tube-line")
                .replaceFirst("alternatives:", "alternatives:\n  misspelt: {entry.top-sped: 100 m/min}");

        assertThat(failure(kind, body(text)))
                .contains("line ", "alternative \"misspelt\": entry.top-sped", "Did you mean entry.top-speed?");
        assertThat(worth(body(text)).get("notes").toString())
                .contains("entry.top-sped")
                .doesNotContain("no other ways");
    }

    /** The figures that people repeat stand in the tables of the document, whatever their headings are. */
    @Test
    void whatTheBestAlternativeIsWorthIsThatOfTheDocument() throws IOException, InterruptedException {
        JsonNode worth = worth(body(shipped("tube-line")));

        assertThat(worth.at("/figures/0/1").asText()).isEqualTo("\"as written\"");
        assertThat(worth.get("figures")).hasSize(4);
        List<String> ofIt = new ArrayList<>();
        worth.get("tables")
                .forEach(table -> table.get("rows").forEach(row -> {
                    if (row.get(0).asText().equals("as written")) {
                        row.forEach(cell -> ofIt.add(cell.asText()));
                    }
                }));
        for (int i = 1; i < 4; i++) {
            String value = worth.get("figures").get(i).get(1).asText().replace('\u00a0', ' ');
            assertThat(ofIt).contains(value.replaceAll(" (EUR|years)", ""));
        }
    }

    /** The same as compare says of a line and the same line with the change as an alternative. */
    @Test
    void whatAChangeOfTheLineBringsIsThatOfTheComparison() throws IOException, InterruptedException {
        String opened = shipped("tube-line");
        String faster = opened.replace("speed: 45 m/min", "speed: 54 m/min");

        JsonNode worth = worth(body(faster).put("opened", opened));

        JsonNode compared = worth(body(opened + "\n").put("opened", opened));
        assertThat(compared.get("change").asText().replace('\u00a0', ' '))
                .isEqualTo(
                        "Against the line as it was opened, in a year: no difference in good output is shown;"
                                + " none in lost time. At the values given that is 0 EUR a year, before what the change costs.");
        assertThat(worth.get("change").asText()).contains("more good output", "more lost time", "EUR (");
        assertThat(worth.get("gain").asText()).contains("EUR (");
        assertThat(worth.get("change").asText()).contains(worth.get("gain").asText());
    }

    private static JsonNode worth(ObjectNode question) throws IOException, InterruptedException {
        JsonNode begun = ask("/api/job/worth", question);
        JsonNode state;
        do {
            state = ask("/api/job", begun);
            assertThat(state.get("failed").isNull()).as(state.toString()).isTrue();
        } while (state.get("result").isNull());
        return state.get("result");
    }

    @Test
    void reportAndTablesCanBeTakenAway() throws IOException, InterruptedException {
        HttpResponse<byte[]> report = post("/api/report", body(shipped("tube-line")));
        HttpResponse<byte[]> tables = post("/api/tables", body(shipped("tube-line")));

        assertThat(new String(report.body(), StandardCharsets.UTF_8))
                .startsWith("<!")
                .contains("Kestrel Road");
        assertThat(tables.headers().firstValue("Content-Type")).contains("application/zip");
        assertThat(new String(tables.body(), StandardCharsets.ISO_8859_1))
                .startsWith("PK")
                .contains("scenario.yaml", "verdict.json");
    }
}
