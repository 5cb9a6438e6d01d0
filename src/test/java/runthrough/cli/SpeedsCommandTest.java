package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code speeds}: what comes out at which speed, said in plain language, as JSON and in a folder. */
class SpeedsCommandTest {
    private static final List<String> FILES = List.of("output-against-speed.csv", "report.html", "speeds.json");

    /**
     * Joints of 60 s empty the 100 m at 100 m/min. From there on every coil change stops the process, which then stands for 300 s:
     * 6000 m/h come out at 100 m/min, and much less beyond.
     */
    private static final String DEAR_STOPS =
            Session.LINE.replace("{speed: 60 m/min}", "{speed: 60 m/min, restart: {delay: 300 s}}");

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenarios() {
        session = new Session(folder).write("dear.yaml", DEAR_STOPS).write("marginal.yaml", Session.MARGINAL);
    }

    @Test
    void outputThatFallsWhenTheLineIsSpedUpIsSaidFirst() {
        Session.Done done = session.run("speeds", "dear.yaml", "--no-report", "--from", "60m/min", "--to", "115m/min");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out().lines().skip(1).findFirst().orElseThrow()).startsWith("OUTPUT HAS A PEAK. ");
        assertThat(done.out().replace('\n', ' '))
                .contains("Faster gives less: at 115 m/min", "As it is, at 60 m/min, 3600 m/h come out and 100 %");
        assertThat(done.out().lines())
                .allSatisfy(
                        line -> assertThat(line).hasSizeLessThanOrEqualTo(80).doesNotEndWith("..."));
        assertThat(session.files()).containsExactly("dear.yaml", "marginal.yaml");
    }

    @Test
    void aSpeedThatTheCarriageCannotFollowIsNotTheOneToRecommend() throws IOException {
        // Rule CHECK-18. Four strands at 20 m/min: 80 m/min.
        session.write(
                "slow.yaml",
                DEAR_STOPS.replaceAll(
                        "accumulator: .*",
                        "accumulator: {strands: 4, stroke: 25 m, carriage: vertical, emptying-speed: 20 m/min}"));
        String[] command = {"speeds", "slow.yaml", "--no-report", "--from", "60m/min", "--to", "95m/min"};
        assertThat(session.run(command).out().replace('\n', ' '))
                .contains("Output rises up to 80 m/min, the fastest speed that is possible")
                .contains("Faster than 80 m/min the line is not feasible; at 95 m/min: accumulator.emptying-speed = 80")
                .containsPattern("95 +not possible");
        String[] json = Arrays.copyOf(command, command.length + 1);
        json[command.length] = "--json";
        JsonNode speeds = new ObjectMapper().readTree(session.run(json).out());
        assertThat(speeds.at("/not_possible/0/speed_m_per_s").asDouble()).isCloseTo(95 / 60.0, within(1e-9));
        assertThat(speeds.at("/peak/fastest_m_per_s").asDouble()).isCloseTo(80 / 60.0, within(1e-9));
    }

    @Test
    void peakAndLossOfTheTargetLieWhereTheAccumulatorIsJustEmptied() throws IOException {
        Session.Done done =
                session.run("speeds", "dear.yaml", "--no-report", "--json", "--from", "60m/min", "--to", "115m/min");
        JsonNode speeds = new ObjectMapper().readTree(done.out());

        assertThat(speeds.at("/format").asText()).isEqualTo("runthrough-speeds/2");
        assertThat(speeds.at("/peak/where").asText()).isEqualTo("inside");
        // 100 m in 60 s; the search stops within a thousandth.
        assertThat(speeds.at("/peak/speed_m_per_s").asDouble()).isCloseTo(100 / 60.0, within(0.01));
        assertThat(speeds.at("/target_lost/fastest_that_meets_m_per_s").asDouble())
                .isCloseTo(100 / 60.0, within(0.001 * 100 / 60));
        assertThat(speeds.at("/peak/output_lost_at_fastest_m_per_s/mean").asDouble())
                .isPositive();
        assertThat(speeds.at("/points")).hasSizeGreaterThanOrEqualTo(15);
    }

    @Test
    void whereTheTargetIsMetThroughoutItSaysSo() {
        Session.Done done = session.run("speeds", "dear.yaml", "--no-report");

        assertThat(done.out().replace('\n', ' '))
                .contains("FASTER GIVES MORE", "The target of 95 % is met at every speed tried.");
    }

    @Test
    void folderHasPageAndNumbers_theSameBytesForAnyNumberOfThreads() throws IOException {
        session.run("speeds", "marginal.yaml", "--points", "5", "--out", "one", "--threads", "1");
        session.run("speeds", "marginal.yaml", "--points", "5", "--out", "three", "--threads", "3");

        for (String file : FILES) {
            assertThat(folder.resolve("one").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("three").resolve(file));
        }
        assertThat(session.files()).hasSize(2 + 2 * FILES.size());
        String page = Files.readString(folder.resolve("one/report.html"));
        assertThat(List.of("What comes out at which process speed?", "most comes out:", "as it is:", "target: 95 %"))
                .allMatch(page::contains);
        assertThat(Files.readAllLines(folder.resolve("one/output-against-speed.csv")))
                .hasSizeGreaterThan(5)
                .first()
                .asString()
                .startsWith("speed (m/min),factor,output (m/h)");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    --from 100m/min --to 50m/min | range of speeds = 100 m/min to 50 m/min; must be more than 0 and not upside down
                    --from 50m/min --to 50m/min  | range of speeds = 50 m/min to 50 m/min; must be more than 0 and not upside down
                    --from 0m/min                | range of speeds = 0 m/min to 84 m/min; must be more than 0
                    --to 500m/min                | range of speeds = 500 m/min at one end; the line cannot be run so
                    --from 30kg                  | --from = 30kg; kg is a unit of mass, not of speed
                    --to 90                      | --to = 90; the unit is missing
                    --points 2                   | --points = 2; must be a whole number from 3 to 1000
                    --target 0%                  | --target = 0%; must be more than 0 % and less than 100 %
                    --target 100%                | --target = 100%; must be more than 0 % and less than 100 %
                    """)
    void whatCannotBeAskedIsRefusedBeforeAnythingIsRun(String options, String message) {
        Session.Done done = session.run(("speeds dear.yaml " + options).split(" +"));

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.err()).startsWith(message).doesNotContain("Exception");
        assertThat(done.out()).isEmpty();
        assertThat(session.files()).containsExactly("dear.yaml", "marginal.yaml");
    }
}
