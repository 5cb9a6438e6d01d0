package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines that the server offers, reads and changes. */
class ServedLinesTest extends ServedPage {

    static Stream<String> names() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.replace(".yaml", ""))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @Test
    void everyShippedLineIsOffered() throws IOException, InterruptedException {
        JsonNode lines = JSON.readTree(send(to("/api/lines")).body());

        assertThat(lines)
                .extracting(line -> line.get("name").asText())
                .containsExactlyInAnyOrderElementsOf(names().toList());
        assertThat(lines.get(0).get("name").asText()).isEqualTo("tube-line");
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyShippedLineIsReadAnsweredAndFollowed(String name) throws IOException, InterruptedException {
        String text = shipped(name);

        JsonNode line = ask("/api/line", body(text));
        JsonNode answer = ask("/api/answer", body(text).put("effort", 0));
        JsonNode course = ask("/api/course", body(text));

        assertThat(line.get("problems")).isEmpty();
        assertThat(line.get("fields")).isNotEmpty();
        assertThat(answer.get("word").asText()).isNotEmpty();
        assertThat(answer.get("figures")).isNotEmpty();
        assertThat(course.get("t").size()).isEqualTo(course.get("x").size()).isGreaterThan(10);
        assertThat(course.get("changes")).isNotEmpty();
    }

    /** Each field set to what it shows is the same line: showing loses nothing. */
    @ParameterizedTest
    @ValueSource(strings = {"metric", "us"})
    void unitsAreSwitchedWithoutLosingAnything(String units) throws IOException, InterruptedException {
        String text = shipped("tube-line");

        JsonNode line = ask("/api/line", body(text).put("units", units));
        JsonNode speed = field(line, "rated-speed");

        assertThat(speed.get("shown").asText()).isEqualTo(units.equals("us") ? "147.6 ft/min" : "45 m/min");
        assertThat(speed.get("si").asDouble()).isEqualTo(0.75);
        assertThat(field(line, "entry.top-speed").get("written").asText()).isEqualTo("90 m/min");
    }

    private static JsonNode field(JsonNode line, String path) {
        for (JsonNode field : line.get("fields")) {
            if (field.get("path").asText().equals(path)) {
                return field;
            }
        }
        throw new AssertionError("no field " + path);
    }

    private static ObjectNode edit(String text, String path, @Nullable String value) {
        ObjectNode body = body(text);
        ObjectNode change = body.putArray("changes").addObject().put("path", path);
        if (value != null) {
            change.put("value", value);
        }
        return body;
    }

    @Test
    void aChangeIsWrittenIntoTheFileAndComments_stay() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        String now = ask("/api/edit", edit(text, "accumulator.stroke", "16 m"))
                .get("text")
                .asText();

        assertThat(now).isEqualTo(text.replace("stroke: 9 m", "stroke: 16 m"));
    }

    /** Each coil of the schedule has a speed of its own, the fastest 400 ft/min: all of them go nine tenths as fast. */
    @Test
    void aSpeedIsWrittenAsAFactorOfThoseInASchedule() throws IOException, InterruptedException {
        String text = shipped("slitter");

        JsonNode edited =
                ask("/api/edit", edit(text, "rated-speed", "360 ft/min").put("units", "us"));

        assertThat(edited.get("line").get("problems")).isEmpty();
        assertThat(edited.get("text").asText()).contains("process-speed-factor: 0.9");
        assertThat(field(edited.get("line"), "rated-speed").get("shown").asText())
                .isEqualTo("360 ft/min");
    }

    /** Each coil of the schedule has a speed of its own: that of the process is asked for by none. */
    @Test
    void aNumberThatActsOnNothingIsNotOffered() throws IOException, InterruptedException {
        assertThat(ask("/api/line", body(shipped("slitter"))).findValuesAsText("path"))
                .contains("rated-speed")
                .doesNotContain("process.speed");
    }

    /** 8 strands hold 160 m with a stroke of 20 m. */
    @Test
    void aCapacityIsWrittenAsWhatGivesIt() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        String now = ask("/api/edit", edit(text, "usable-capacity", "160 m"))
                .get("text")
                .asText();

        assertThat(now).isEqualTo(text.replace("stroke: 9 m", "stroke: 20 m"));
    }

    /** Rule LEVER-4. 8 + 20 + 24 + 6 + 10 s, 1 / 0.98 times on average, are 69.388 s: to 60 s it is 9.2 s off every pass. */
    @Test
    void aJointCycleTimeIsWrittenAsSecondsOffEveryPass_orMore() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        String shorter = edited(text, "joint-cycle-time", "60 s");
        String longer = edited(shorter, "joint-cycle-time", "80 s");
        String stillLonger = edited(longer, "joint-cycle-time", "90 s");

        assertThat(shorter).contains("join-shorter-by: 9.2 s", "shear tail: 8 s", "travel: 600 mm/min");
        assertThat(longer).contains("join-shorter-by: 0 s", "- {added: 10.4 s}");
        assertThat(stillLonger).contains("- {added: 20.2 s}").doesNotContain("10.4 s");
        assertThat(edited(stillLonger, "joint-cycle-time", "60 s")).isEqualTo(shorter);
    }

    /** Rule LEVER-4. Twelve observed times, 109 min together: 545 s on average. */
    @Test
    void aRethreadTimeIsWrittenTheSameWay() throws IOException, InterruptedException {
        String text = shipped("stamping-rethread");

        String longer = edited(text, "rethread-time", "12 min");

        assertThat(edited(text, "rethread-time", "9 min")).contains("join-shorter-by: 5 s");
        assertThat(longer).contains("shift: 175 s");
        assertThat(edited(longer, "rethread-time", "9 min")).contains("join-shorter-by: 5 s", "shift: 0 s");
    }

    private String edited(String text, String path, String value) throws IOException, InterruptedException {
        JsonNode edited = ask("/api/edit", edit(text, path, value));
        assertThat(edited.get("line").get("problems")).isEmpty();
        // As many digits are written as a person might write.
        assertThat(field(edited.get("line"), path).get("shown").asText()).isEqualTo(value);
        return edited.get("text").asText();
    }

    @Test
    void elementsOfWorkAreAddedAndRemoved() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        String more = ask("/api/edit", edit(text, "coil-change.join[+]", "{grind: 15 s}"))
                .get("text")
                .asText();
        String fewer = ask("/api/edit", edit(more, "coil-change.join[3]", null))
                .get("text")
                .asText();

        assertThat(more).contains("- inspect: 10 s\n    - {grind: 15 s}\n");
        assertThat(fewer).contains("- {grind: 15 s}").doesNotContain("inspect");
    }

    /** Of two elements with one name, the page says which of them it was that somebody stated. */
    @Test
    void theTimeOfANamesakeIsStatedByItsNumber() throws IOException, InterruptedException {
        String one = ask("/api/edit", edit(shipped("tube-line"), "coil-change.join[+]", "{grind: 15 s}"))
                .get("text")
                .asText();
        String two = ask("/api/edit", edit(one, "coil-change.join[+]", "{grind: 15 s}"))
                .get("text")
                .asText();
        ObjectNode retimed = edit(two, "coil-change.join[5]", "12 s");
        ((ObjectNode) retimed.at("/changes/0")).put("time", "constant");

        JsonNode edited = ask("/api/edit", retimed);

        assertThat(edited.at("/line/problems")).isEmpty();
        assertThat(edited.get("text").asText()).contains("- {grind: 15 s}", "12 s", "coil-change.join[5]");
    }

    @Test
    void whatIsWrongIsSaidWithItsPathInTheWordsOfTheCommandLine() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        JsonNode problems =
                ask("/api/edit", edit(text, "accumulator.stroke", "-9 m")).at("/line/problems");

        assertThat(problems.get(0).get("path").asText()).isEqualTo("accumulator.stroke");
        assertThat(problems.get(0).get("message").asText()).contains("-9 m", "must be more than 0 m");
    }

    @Test
    void aScenarioNamesNoFilesOfTheMachine() throws IOException, InterruptedException {
        String text = shipped("slitter").replaceAll("schedule: \\S+", "schedule: /etc/passwd");

        JsonNode problems = ask("/api/line", body(text)).get("problems");

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).get("message").asText())
                .contains("only files of the lines that come with the program");
    }

    /** However an alternative names them: they are read when it is compared. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{coils.schedule: /etc/passwd}",
                "{coils: {schedule: /etc/passwd}}",
                "{' coils.schedule ': ../line.csv}",
                "{coil-change.join.align.sheet: /etc/passwd}",
                "{'coil-change.join[1].sheet': /etc/passwd}",
                "{coil-change.join.align: {sheet: /etc/passwd}}"
            })
    void anAlternativeNamesNoFilesOfTheMachine(String sets) throws IOException, InterruptedException {
        String text = shipped("slitter").replaceFirst("(?ms)^alternatives:.*?(?=^\\S|\\z)", "")
                + "alternatives: {other: " + sets + "}\n";

        assertThat(ask("/api/line", body(text)).at("/problems/0/message").asText())
                .contains("only files of the lines that come with the program");
        assertThat(post("/api/job/compare", body(text)).statusCode()).isEqualTo(422);
    }

    /** The same words are names that a work element may have. */
    @Test
    void aWorkElementMayBeCalledLikeAKeyOfAFile() throws IOException, InterruptedException {
        for (String name : List.of("file", "times", "sheet", "schedule")) {
            String text = shipped("tube-line").replace("inspect: 10 s", name + ": 10 s");

            assertThat(ask("/api/line", body(text)).get("problems")).isEmpty();
        }
    }

    /** A figure is worked out of the line, for which its files would be read. */
    @Test
    void anEditReadsNoFilesOfTheMachine() throws IOException, InterruptedException {
        String text = shipped("slitter");
        String foreign = text.replaceAll("schedule: \\S+", "schedule: /etc/passwd");

        JsonNode given = ask("/api/edit", edit(foreign, "joint-cycle-time", "40 s"));
        JsonNode set = ask("/api/edit", edit(text, "coils.schedule", "/etc/passwd"));

        for (JsonNode answer : List.of(given, set)) {
            JsonNode problems = answer.get("line").get("problems");
            assertThat(problems).hasSize(1);
            assertThat(problems.get(0).get("message").asText())
                    .contains("only files of the lines that come with the program");
        }
        assertThat(set.get("text").asText()).isEqualTo(text);
    }

    @Test
    void anEmptyValueIsCalledThat() throws Exception {
        JsonNode problems =
                ask("/api/edit", edit(shipped("tube-line"), "rated-speed", "")).at("/line/problems");

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).get("message").asText())
                .isEqualTo("is empty. Give a value, with its unit if it has one.");
    }

    /** Those of the alternatives, too, in the order of the file, as check says them. */
    @Test
    void allFaultsOfAFileAreShownAtOnce() throws Exception {
        String text = shipped("roll-former")
                .replace("uncoiler-path: 9 m", "uncoiler-path: nine")
                .replace("second person: {coil-change.crew: 2}", "second person: {coil-change.crew: many}");

        assertThat(ask("/api/line", body(text)).get("problems"))
                .extracting(problem -> problem.get("path").asText())
                .containsExactly("entry.uncoiler-path", "alternative \"second person\": coil-change.crew");
    }
}
