package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.cli.terminal.ExitCode;

/** {@code compare}: which alternative is worth what, said in plain language, as JSON and in a folder. */
class CompareCommandTest {
    private static final List<String> FILES = List.of("alternatives.csv", "changes.csv", "compare.json", "report.html");

    private static final String ALTERNATIVES = """
        alternatives:
          rethread: {practice: rethread, coil-change.rethread: 500 s}
          third uncoiler: {entry.uncoilers: 3}
          20 m more: {accumulator.capacity: 120 m}
        """;

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenarios() {
        session = new Session(folder)
                .write(
                        "exact.yaml",
                        Session.LINE + ALTERNATIVES.replaceAll("(?m)^  20 m more.*\n", "") + "today: rethread\n")
                .write("marginal.yaml", Session.MARGINAL + ALTERNATIVES)
                .write("plain.yaml", Session.LINE);
    }

    /** Measured: 30 s to fit, 26 s to weld. 200 mm at 600 mm/min take 20 s, at 1200 mm/min 10 s; 6 s beside it. */
    @Test
    void withMeasuredTimesAnAlternativeHasTheJointThatItHasByItself() throws IOException {
        session.write("sheet.csv", "no,join: fit [s],join: weld [s]\n" + "1,30,26\n".repeat(12))
                .write(
                        "timed.yaml",
                        Session.LINE.replace(
                                        "{join strip: 60 s}", "{fit: 20 s}, {weld: {travel: 600 mm/min, plus: 6 s}}")
                                + """
                                alternatives:
                                  quicker weld: {coil-change.join.weld.travel: 1200 mm/min}
                                  longer beside it: {coil-change.join.weld.plus: 10 s}
                                  later: {coil-change.join.fit.shift: 2 s}
                                  another joint: {coil-change.join: [{glue: 45 s}]}
                                """);
        JsonNode compared = new ObjectMapper()
                .readTree(session.run("compare", "timed.yaml", "--times", "sheet.csv", "--no-report", "--json")
                        .out());

        Map<String, Double> joints = Map.of(
                "quicker weld", 30.0 + 16, "longer beside it", 30.0 + 30, "later", 32.0 + 26, "another joint", 45.0);
        for (JsonNode one : compared.at("/alternatives")) {
            String name = one.at("/name").asText();
            Session.Done alone = session.run(
                    "run", "timed.yaml", "--times", "sheet.csv", "--no-report", "--json", "--alternative", name);
            assertThat(alone.code()).as(alone.err()).isZero();
            assertThat(one.at("/figures/joint_s/mean").asDouble()).as(name).isCloseTo(joints.get(name), within(1e-6));
            assertThat(new ObjectMapper()
                            .readTree(alone.out())
                            .at("/joint/cycle_time_s/mean/mean")
                            .asDouble())
                    .as(name)
                    .isCloseTo(joints.get(name), within(1e-6));
        }
    }

    @Test
    void exactDifferencesAreThoseOfTheHandCalculation() throws IOException {
        Session.Done done = session.run("compare", "exact.yaml", "--no-report", "--json");
        assertThat(done.code()).as(done.err()).isZero();
        JsonNode answer = new ObjectMapper().readTree(done.out());

        assertThat(answer.at("/format").asText()).isEqualTo("runthrough-compare/3");
        assertThat(answer.at("/today/name").asText()).isEqualTo("rethread");
        assertThat(answer.at("/year_s").asDouble()).isEqualTo(4000 * 3600);
        // A coil takes 1000 s. 20 of them and 20 rethreads: 20000 m in 30000 s; joined all run through at 1 m/s. A
        // metre weighs
        // 3.14 kg.
        double lessSlow = 1 - 20 / 30.0;
        JsonNode written = answer.at("/alternatives/0");
        assertThat(written.at("/name").asText()).isEqualTo("as written");
        assertThat(written.at("/figures/output_m_per_s/less_today/mean").asDouble())
                .isCloseTo(lessSlow, within(1e-9));
        assertThat(written.at("/figures/output_m_per_s/less_today/low").isNull())
                .isTrue();
        assertThat(written.at("/figures/output_m_per_s/less_today/significance").asText())
                .isEqualTo("significant");
        assertThat(written.at("/per_year/output_kg_per_year/less_today/mean").asDouble())
                .isCloseTo(lessSlow * 3.14 * 4000 * 3600, within(1e-2));
        // One person by default.
        assertThat(written.at("/figures/crew_person_s_per_change/mean").asDouble())
                .isCloseTo(60, within(1e-9));
        // Paid for all of the 4000 h, though the joint takes a minute of 1000 s: one person for 4000 h.
        assertThat(written.at("/per_year/paid_person_s_per_year/mean").asDouble())
                .isCloseTo(4000 * 3600, within(1e-3));
        // The accumulator of the line as written is none of the rethreading one.
        assertThat(answer.at("/changes").findValuesAsText("what")).contains("practice", "accumulator capacity");
        assertThat(answer.at("/changes/0/today").asText()).isEqualTo("rethread");
        assertThat(answer.at("/changes/0/alternatives/0/value").asText()).isEqualTo("join with accumulator");
        assertThat(answer.at("/alternatives/1/figures/output_m_per_s/less_today/mean")
                        .asDouble())
                .isCloseTo(lessSlow, within(1e-9));
    }

    @Test
    void theAnswerComesFirst_andEveryDifferenceHasItsWord() {
        Session.Done done =
                session.run("compare", "marginal.yaml", "--no-report", "--replications", "20", "--coil-changes", "60");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().lines().skip(1).findFirst().orElseThrow()).startsWith("MOST OUTPUT: 20 M MORE.");
        assertThat(done.out().replaceAll("\\s+", " "))
                .contains("\"third uncoiler\" changes nothing in the output; the time lost is the same.")
                .contains("rethread entry and process are one strip")
                .contains("\"rethread\" gives ", "less than \"as written\"", "less that of \"as written\"", "4000 h");
        // A coil of 1000 m takes 1000 s at 60 m/min; 4000 h of 3.14 kg/m at most come to 45 216 t, less what is lost.
        assertThat(done.out())
                .containsPattern("third uncoiler +0 +none")
                .containsPattern(
                        "\\ntoday +4[45] \\d{3} t a year \\(4[45] \\d{3} to 4[45] \\d{3} t a year; \"as written\"\\)")
                .containsPattern("\\n20 m more +\\+\\d+ t a year \\(\\d+ to \\d+ t a year; significant\\)")
                .containsPattern("\\nthird uncoiler +0 t a year \\(none\\)");
        assertThat(done.out().lines())
                .allSatisfy(
                        line -> assertThat(line).hasSizeLessThanOrEqualTo(100).doesNotEndWith("..."));
    }

    @Test
    void theSameComesOutWithAnyNumberOfThreads() {
        assertThat(session.run("compare", "marginal.yaml", "--no-report", "--json", "--threads", "3")
                        .out())
                .isEqualTo(session.run("compare", "marginal.yaml", "--no-report", "--json", "--threads", "1")
                        .out());
    }

    @Test
    void aFolderHoldsPageNumbersAndDocument() throws IOException {
        Session.Done done = session.run("compare", "marginal.yaml", "--out", "today");

        assertThat(done.code()).as(done.err()).isZero();
        try (var files = Files.list(folder.resolve("today"))) {
            assertThat(files.map(file -> file.getFileName().toString()).sorted())
                    .containsExactlyElementsOf(FILES);
        }
        assertThat(Files.readString(folder.resolve("today/alternatives.csv")))
                .startsWith("alternative,figure,unit,value,low,high,less today's")
                .contains("\r\nrethread,output of a year,t,", ",none\r\n", ",significant\r\n");
        assertThat(Files.readAllLines(folder.resolve("today/changes.csv")))
                .contains("accumulator capacity,100 m,none,,120 m", "uncoilers,2,none,3,");
        assertThat(Files.readString(folder.resolve("today/report.html")))
                .doesNotContain("accumulator.capacity", "entry.uncoilers: 3")
                .contains("<svg", "20 m more", "id=\"alternatives\"", "id=\"gain\"");
    }

    /** The entry stands for 500 s where a joint of 60 s runs through: 20 coils of 1000 m at 1 m/s and 20 rethreads. */
    @Test
    void theFileHasSharesAsSharesAndTimesInSeconds() throws IOException {
        session.run("compare", "exact.yaml", "--out", "exact");

        assertThat(Files.readAllLines(folder.resolve("exact/alternatives.csv")))
                .contains(
                        "alternative,figure,unit,value,low,high,less today's,difference low,difference high,confidence of the"
                                + " difference,it is",
                        "rethread,coil changes run through,,0,,,,,,,",
                        "as written,coil changes run through,,1,,,1,,,0.975,exact",
                        "rethread,joint cycle time,s,500,,,,,,,",
                        "as written,\"crew time at the joint, at a coil change\",person-min,1,,,-7.333333333333333,,,0.975,exact");
    }

    @Test
    void anotherOneMayBeCalledToday() throws IOException {
        Session.Done done = session.run("compare", "marginal.yaml", "--today", "20 m more", "--no-report", "--json");

        assertThat(new ObjectMapper().readTree(done.out()).at("/today/name").asText())
                .isEqualTo("20 m more");
    }

    @Test
    void optionsHoldForAllOfThem() throws IOException {
        Session.Done done = session.run(
                "compare",
                "marginal.yaml",
                "--no-report",
                "--json",
                "--coil-changes",
                "31",
                "--replications",
                "4",
                "--set",
                "run.hours-per-year=1000h");
        JsonNode answer = new ObjectMapper().readTree(done.out());

        assertThat(answer.at("/year_s").asDouble()).isEqualTo(3.6e6);
        assertThat(answer.at("/today/coil_changes_run").asInt()).isEqualTo(120);
        // Nothing is random in the rethread, of which one replication says all.
        assertThat(answer.at("/alternatives/0/coil_changes_run").asInt()).isEqualTo(30);
        assertThat(answer.at("/alternatives/1/coil_changes_run").asInt()).isEqualTo(120);
    }

    @Test
    void anAlternativeMayBeRunByAnyOtherCommand() throws IOException {
        Session.Done done = session.run("run", "marginal.yaml", "--alternative", "20 m more", "--no-report", "--json");

        assertThat(done.code()).as(done.err()).isZero();
        // 120 m bear every joint of up to 110 s.
        assertThat(new ObjectMapper()
                        .readTree(done.out())
                        .findValue("share_run_through")
                        .at("/mean")
                        .asDouble())
                .isEqualTo(1);
    }

    @Test
    void whatCannotBeComparedIsSaidBeforeAnythingIsComputed() {
        assertRefused("there is nothing to compare as written with", "compare", "plain.yaml");
        assertRefused(
                "--today = 20 m mroe; is not an alternative of this scenario. Did you mean 20 m more?",
                "compare",
                "marginal.yaml",
                "--today",
                "20 m mroe");
        assertRefused("compare runs all alternatives", "compare", "marginal.yaml", "--alternative", "20 m more");
        assertRefused(
                "--alternative 20 m mroe; is not an alternative of this scenario. Did you mean 20 m more?",
                "run",
                "marginal.yaml",
                "--alternative",
                "20 m mroe");
        session.write("bad.yaml", Session.LINE + "alternatives: {a: {entry.uncoilers: 0}, b: {coil.with: 1 m}}\n");
        assertRefused("alternative \"a\": entry.uncoilers = 0; must be", "compare", "bad.yaml");
        assertRefused("alternative \"b\": coil.with = 1 m; is not a part of this scenario", "check", "bad.yaml");
    }

    private void assertRefused(String message, String... command) {
        List<String> before = session.files();
        Session.Done done = session.run(command);

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err()).contains(message);
        assertThat(session.files()).isEqualTo(before);
    }

    /** At 150 m/min the process outruns the entry of 120 m/min: refused, and the other is compared all the same. */
    @Test
    void oneThatCannotRunIsNamedAndTheOthersAreCompared() throws IOException {
        String faster = "  too fast: {process.speed: 150 m/min}\n";
        session.write("part.yaml", Session.LINE + ALTERNATIVES + faster);
        session.write("none.yaml", Session.LINE + "alternatives:\n" + faster);

        Session.Done done = session.run("compare", "part.yaml", "--no-report");
        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().replaceAll("\\s+", " "))
                .contains("\"too fast\" cannot be run, and is not compared: entry.top-speed = ", "\"third uncoiler\"");
        JsonNode answer = new ObjectMapper()
                .readTree(session.run("compare", "part.yaml", "--no-report", "--json")
                        .out());
        assertThat(answer.at("/alternatives")).hasSize(3);
        assertThat(answer.at("/cannot_run/0/name").asText()).isEqualTo("too fast");
        assertThat(answer.at("/cannot_run/0/why").asText()).startsWith("entry.top-speed");

        // What the others are held against has to run, and so has one of the others.
        assertThat(session.run("compare", "part.yaml", "--no-report", "--today", "too fast")
                        .err())
                .contains("--today = too fast; cannot be run: entry.top-speed");
        Session.Done none = session.run("compare", "none.yaml", "--no-report");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("alternative \"too fast\": entry.top-speed");
        assertThat(session.run("check", "part.yaml").err()).contains("alternative \"too fast\": entry.top-speed");
    }

    /** Joints of 50 s to 110 s, one in six longer than 100 s, and with 120 m none. */
    @Test
    void theTargetWithoutAStopIsComparedWhereThereIsOne() throws IOException {
        session.write(
                "both.yaml",
                (Session.MARGINAL + ALTERNATIVES).replace("target: 95 %}", "target: 95 %, target-without-stop: 99 %}"));

        Session.Done done = session.run("compare", "both.yaml", "--no-report");
        JsonNode json = new ObjectMapper()
                .readTree(session.run("compare", "both.yaml", "--no-report", "--json")
                        .out());

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().replaceAll("\\s+", " "))
                .containsPattern(
                        "Side by side: coil changes without a stop share, % target as written 8\\d.* [(].* to .*[)] 99 %");
        JsonNode more = json.at("/alternatives/" + (json.at("/alternatives").size() - 1));
        assertThat(more.at("/name").asText()).isEqualTo("20 m more");
        assertThat(more.at("/share_without_stop").asDouble()).isEqualTo(1);
        assertThat(session.run("compare", "marginal.yaml", "--no-report").out()).doesNotContain("without a stop");
    }
}
