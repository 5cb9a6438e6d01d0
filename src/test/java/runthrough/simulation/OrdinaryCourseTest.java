package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.SimulationException;

/**
 * An ordinary course, taken without events, is the one that the events give, to the last bit: recording the elements of work takes
 * every event.
 */
class OrdinaryCourseTest {
    private static final int LINES_A_TEST = 400;

    private static LongStream firstSeeds() {
        return LongStream.range(0, 10).map(some -> some * LINES_A_TEST);
    }

    private static void sameBothWays(String name, Line line, RunPlan plan) {
        LineSimulator simulator = LineSimulator.of(line, plan);
        Replication byEvents;
        try {
            byEvents = simulator.run(0, Detail.ELEMENTS);
        } catch (SimulationException refused) {
            assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> simulator.run(0, Detail.CHANGES)))
                    .as(name)
                    .hasMessage(refused.getMessage());
            return;
        }
        Replication atOnce = simulator.run(0, Detail.CHANGES);
        assertThat(atOnce.changes()).as(name).isEqualTo(byEvents.changes());
        assertThat(atOnce.totals()).as(name).isEqualTo(byEvents.totals());
        assertThat(simulator.run(0, Detail.TOTALS).totals()).as(name).isEqualTo(byEvents.totals());
    }

    private static List<String> shippedLines() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.map(Path::toString)
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("shippedLines")
    void shippedLinesRunTheSameBothWays(String file) {
        SimulationRequest request = assertInstanceOf(
                        ScenarioReading.Accepted.class,
                        ScenarioFile.open(Path.of(file)).read())
                .request();
        sameBothWays(file, request.line(), request.run().withExtent(new Extent.Changes(2000)));
    }

    @ParameterizedTest
    @MethodSource("firstSeeds")
    void randomLinesRunTheSameBothWays(long first) {
        for (long seed = first; seed < first + LINES_A_TEST; seed++) {
            sameBothWays(
                    "line of seed " + seed, RandomLine.of(seed), new RunPlan(new Extent.Changes(40), 2, 1, seed, 0.99));
        }
    }
}
