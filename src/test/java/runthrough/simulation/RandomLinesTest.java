package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;

/** Runs of lines drawn at random from all features at once, each judged by the rules. A failure names the line's seed. */
class RandomLinesTest {
    private static final int LINES_A_TEST = 100;

    private static LongStream firstSeeds() {
        return LongStream.range(0, 25).map(hundred -> hundred * LINES_A_TEST);
    }

    private static Replication run(Line line, long seed, Detail detail) {
        return new LineSimulator(line, new RunPlan(new Extent.Changes(8), 0, 1, seed, 0.99)).run(0, detail);
    }

    @ParameterizedTest
    @MethodSource("firstSeeds")
    void everyRunKeepsTheRules(long first) {
        // Rules MOTION-1, MOTION-4, ENTRY-1.
        int judged = 0;
        for (long seed = first; seed < first + LINES_A_TEST; seed++) {
            try {
                Line line = RandomLine.of(seed);
                Replication run = run(line, seed, Detail.TRACE);
                new MotionReferee(line, run).judge();
                new WorkReferee(line, run).judge();
                new AccountReferee(line, run).judge();
                judged++;
            } catch (SimulationException refused) {
                assertThat(refused).as("line of seed %s", seed).hasMessageContaining("too short to stop in");
            } catch (AssertionError foul) {
                throw new AssertionError("line of seed " + seed + ": " + foul.getMessage(), foul);
            }
        }
        // Few first coils are drawn too short.
        assertThat(judged).isGreaterThan(80);
    }

    @Test
    void sameSeed_sameResult_howeverOftenAndInWhateverDetail() {
        for (long seed = 0; seed < 50; seed++) {
            Line line = RandomLine.of(1000 + seed);
            Replication once = run(line, seed, Detail.TRACE);
            Replication again = run(RandomLine.of(1000 + seed), seed, Detail.TRACE);

            assertThat(again).as("line of seed %s", seed).isEqualTo(once);
            assertThat(run(line, seed, Detail.CHANGES).totals())
                    .as("line of seed %s", seed)
                    .isEqualTo(once.totals());
        }
    }
}
