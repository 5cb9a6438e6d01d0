package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code limits} says and writes. */
class LimitsCommandTest {
    private static final List<String> FILES = List.of("limits.csv", "limits.json", "report.html");

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenarios() {
        session = new Session(folder).write("quick.yaml", Session.LINE).write("marginal.yaml", Session.MARGINAL);
    }

    private JsonNode limit(String what, String... args) throws IOException {
        Session.Done done = session.run(args);
        assertThat(done.code()).as(done.err()).isZero();
        for (JsonNode limit : new ObjectMapper().readTree(done.out()).at("/limits")) {
            if (limit.path("what").asText().equals(what)) {
                return limit;
            }
        }
        throw new AssertionError("no limit " + what);
    }

    /** Joints of 60 s draw 60 m at 1 m/s: eight strands of 8 m hold 64 m, seven only 56 m. */
    @Test
    void strandsAreCountedWhole() {
        session.write(
                "strands.yaml",
                Session.LINE.replace("capacity: 100 m", "strands: 10, stroke: 8 m, carriage-speed: 600 m/min"));

        assertThat(session.run("limits", "strands.yaml", "--no-report").out().replaceAll("\\s+", " "))
                .contains("The capacity goes by whole strands of 8 m; now 10, needed 8.");
    }

    /** Joints of 60 s draw 60 m of 100 m at 1 m/s: up to 100 s, or 1.6667 m/s = 100 m/min. */
    @Test
    void answerComesFirstInPlainWords() {
        Session.Done done = session.run("limits", "quick.yaml", "--no-report");

        assertThat(done.code()).isZero();
        assertThat(done.out().replace('\n', ' '))
                .startsWith("Quick line (invented) WITHIN ITS LIMITS. As it is, the line runs through 100 %")
                .contains("It would still meet it with the process at up to 1")
                .contains("with up to 40 s more on every pass of the join work");
        assertThat(done.out().lines())
                .anySatisfy(line -> assertThat(line).contains("added to every join", " 0 s", " 40 s"))
                .anySatisfy(line -> assertThat(line).contains("fewest uncoilers", "2 ", " 1 "))
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(session.files()).containsExactly("marginal.yaml", "quick.yaml");
    }

    @Test
    void limitsOfALineWithoutChanceAreThoseOfTheClosedForms_toAThousandth() throws IOException {
        for (String what : List.of("process-speed", "joint-cycle-time")) {
            JsonNode limit = limit(what, "limits", "quick.yaml", "--no-report", "--json");
            double handCalculated = limit.path("limit_of_hand_calculation").asDouble();
            assertThat(limit.path("value").asDouble())
                    .as(what)
                    .isCloseTo(handCalculated, within(1e-3 * handCalculated));
            assertThat(limit.path("differences")).as(what).isEmpty();
        }
    }

    /** 95 % of joints of 50 s to 110 s take up to 107 s; 100 m last for 100 s at 1 m/s, so 0.9346 m/s or 0.9346 of the time. */
    @Test
    void intervalHoldsTheLimit_andTheHandCalculationWithMeanTimesDoesNot() throws IOException {
        JsonNode speed =
                limit("process-speed", "limits", "marginal.yaml", "--no-report", "--json", "--coil-changes", "200");

        assertThat(speed.path("low").asDouble()).isLessThan(100 / 107.0);
        assertThat(speed.path("high").asDouble()).isGreaterThan(100 / 107.0);
        assertThat(speed.path("limit_of_hand_calculation").asDouble()).isCloseTo(100 / 80.0, within(1e-6));
        assertThat(speed.path("differences").toString()).isEqualTo("[\"chance\",\"target\"]");
        assertThat(speed.path("cause_beyond").asText()).isEqualTo("element-took-long");
    }

    @Test
    void aTargetBeyondWhatTheRunCanShowIsSaid_withHowManyWouldDo() {
        // Wilson: z^2 t / (1 - t) = 3.8415 x 9999 = 38,411 coil changes must all run through.
        Session.Done done = session.run("limits", "marginal.yaml", "--no-report", "--target", "99.99%");

        assertThat(done.out().replace('\n', ' '))
                .contains("A target of 99.99 % is beyond what 60 coil changes can show")
                .contains("it would take 38 411.")
                .contains(" s (now 0 s; seen, not shown: the run is too short)");
    }

    /** A joint of 60 s at 1 m/s draws 60 m; the carriage of 20 m bears a third of it, however fast the entry, however long the coil. */
    @Test
    void whereNoValueIsEnoughItIsSaidSo_andNotDrawn() throws IOException {
        Session.Done done = session.run("limits", "quick.yaml", "--out", "short", "--set", "accumulator.capacity=20m");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().replaceAll("\\s+", " "))
                .contains("BEYOND ITS LIMITS", "No value of ", " alone is enough.")
                // 20 m bear 60 s at 0.333 m/s = 20 m/min, and nothing else comes out.
                .contains("with the process at up to 20 m/min (now 60 m/min; good output is then 1200 m/h, now ")
                .contains("lowest entry top speed no value is fast enough (now 120 m/min)")
                .contains("shortest coil no value is long enough (now 1000 m)")
                .contains("fewest uncoilers no number is enough (now 2)")
                .doesNotContain(" none ");
        String page = Files.readString(folder.resolve("short/report.html"));
        String chart = page.substring(page.indexOf("<figure id=\"limits\""), page.indexOf("</figure>"));
        // Seconds off a pass are 0 now, so that they are no part of the present value: they have a chart of their own.
        assertThat(chart).contains("times the present value").doesNotContain("off every join pass");
        assertThat(page).contains("seconds on every pass of the join work; below 0: off it");
        assertThat(chart)
                .contains("fastest process speed", " alone is enough.")
                .doesNotContain("lowest entry top speed", "shortest coil", "fewest uncoilers");
        assertThat(Files.readAllLines(folder.resolve("short/limits.csv")))
                .hasSize(8)
                .anyMatch(line -> line.startsWith("fewest uncoilers,,2,,,,"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"stamping-rethread", "perforating-line"})
    void withoutAnAccumulatorThereAreNoLimits(String line) {
        Path shipped = Path.of("scenarios", line + ".yaml").toAbsolutePath();

        Session.Done done = session.run("limits", shipped.toString(), "--no-report");

        assertThat(done.code()).isZero();
        assertThat(done.out()).contains("NO LIMITS TO FIND. Entry and process of this line are one strip");
    }

    @Test
    void folderHasPageAndNumbers_theSameBytesForAnyNumberOfThreads() throws IOException {
        session.run("limits", "marginal.yaml", "--out", "one", "--threads", "1");
        session.run("limits", "marginal.yaml", "--out", "three", "--threads", "3");

        for (String file : FILES) {
            assertThat(folder.resolve("one").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("three").resolve(file));
        }
        assertThat(session.files()).hasSize(2 + 2 * FILES.size());
        String page = Files.readString(folder.resolve("one/report.html"));
        assertThat(List.of("ITS LIMITS", "fastest process speed", "limit of the hand calculation", "the line as it is"))
                .allMatch(page::contains);
        assertThat(Files.readAllLines(folder.resolve("one/limits.csv")))
                .hasSize(8)
                .first()
                .isEqualTo("limit,unit,now,value,low,high,shown to meet,hand calculation,limiting factor");
    }

    /**
     * 100 m at 1 m/s, slows below 40 m to 0.5 m/s, all at once: a joint of T runs through up to 60 s, and goes without a stop up to 60 s
     * + 40 m / 0.5 m/s = 140 s. With 180 s it takes 40 s off, or 20 m less at the slowed speed: 40 s at 1 m/s are 40 m of capacity.
     */
    @Test
    void ofALineThatSlows_theTargetWithoutAStopHasItsLeversToo() {
        session.write("slows.yaml", """
                title: Slow line (invented)
                coil: {thickness: 2 mm, width: 1 m, density: 7850 kg/m3, length: 2000 m}
                entry: {top-speed: 2 m/s}
                accumulator: {capacity: 100 m}
                process: {speed: 1 m/s, slowing: {speed: 0.5 m/s, level: 40 m}}
                coil-change: {crew: 2, join: [{weld: 180 s}]}
                run: {coil-changes: 5, replications: 1, target: 99 %, target-without-stop: 99 %}
                """);

        Session.Done done = session.run("limits", "slows.yaml", "--no-report");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out())
                .containsPattern("smallest capacity +220 m")
                .contains("What would meet the target without a stop, each change on its own")
                .containsPattern("accumulator capacity +100 m +140 m")
                .containsPattern("joint cycle time, off every pass +0 s +40 s");
        // 100 m, of which 40 m are kept, last for 60 s of the 180 s: 120 s too long, in the sentence as in the table.
        assertThat(done.out().replace('\n', ' ')).contains("with 2:00 min off every pass of the join work");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0%", "100%", "101%"})
    void aTargetThatMakesNoSenseIsRefusedBeforeAnythingIsRun(String target) {
        Session.Done done = session.run("limits", "quick.yaml", "--target", target);

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.err()).startsWith("--target = " + target + "; must be more than 0 % and less than 100 %");
        assertThat(session.files()).containsExactly("marginal.yaml", "quick.yaml");
    }
}
