package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
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
