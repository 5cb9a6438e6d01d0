package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.PlainLine.AT_ONCE;
import static runthrough.simulation.PlainLine.coil;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;

/**
 * Two things that fall together but for rounding, which may then put either first: the run must come through, and to the same
 * result but for rounding. Numbers are drawn at random so that few of them are exact in binary.
 */
class NearTiesTest {

    /** Each for a hundred lines; the seed of a failing one is its display name. */
    private static IntStream seeds() {
        return IntStream.rangeClosed(1, 10);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void creepSpeedIsReachedExactlyAtTheCreepLength_coilChangeStartsThere(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            double creep = random.nextDouble(0.1, 1);
            double up = random.nextDouble(0.1, 1);
            double down = random.nextDouble(0.1, 1);
            double length = random.nextDouble(creep * creep / (2 * down), 20);
            Replication run = new PlainLine()
                    .coils(coil(600), coil(length + creep * creep / (2 * up)))
                    .entry(2.5, up, down)
                    .creep(creep, length)
                    .join(30)
                    .run(2);
            double released = run.changes().get(0).released();
            ChangeRecord second = run.changes().get(1);

            assertThat(second.start()).isCloseTo(released + creep / up, within(1e-6));
            double creeps = (length - creep * creep / (2 * down)) / creep;
            assertThat(second.tailStopped()).isCloseTo(second.start() + creeps + creep / down, within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void matchedEntryComesToCreepSpeedWithTheProcess_creepsFromThere(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            double creep = random.nextDouble(0.1, 1);
            double up = random.nextDouble(0.2, 0.5);
            double down = random.nextDouble(0.2, 1);
            double standsAt = 10 - creep * creep / (2 * down);
            // Slowing half as fast as the entry could from 1.5 m/s takes 1.5^2/d: it passes 10 m slower than creep
            // speed.
            double due = (600 - standsAt - 1.5 * 1.5 / down) / 1.5;
            ChangeRecord change = new PlainLine()
                    .entry(2.5, 0.5, down)
                    .process(1.5, up, down / 2)
                    .creep(creep, 10)
                    .join(30)
                    .downtime(Distribution.constant(due), Distribution.constant(20))
                    .run(1)
                    .changes()
                    .get(0);

            double start = due + 1.5 / (down / 2) + 20 + creep / up;
            assertThat(change.start()).isCloseTo(start, within(1e-6));
            double creeps = (standsAt - creep * creep / (2 * up) - creep * creep / (2 * down)) / creep;
            assertThat(change.tailStopped()).isCloseTo(start + creeps + creep / down, within(1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void downtimeFallsDueAsTheCoilChangeStarts(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            double speed = random.nextDouble(0.5, 2);
            double down = random.nextInt(3) == 0 ? AT_ONCE : random.nextDouble(0.2, 2);
            double up = random.nextInt(3) == 0 ? AT_ONCE : random.nextDouble(0.2, 2);
            double length = random.nextDouble(100, 700);
            double due = Math.nextUp((length - speed * speed / (2 * down)) / speed);
            int ulps = random.nextInt(-3, 3);
            for (int k = 0; k < Math.abs(ulps); k++) {
                due = ulps > 0 ? Math.nextUp(due) : Math.nextDown(due);
            }
            boolean stores = random.nextBoolean();
            Replication run = (stores ? new PlainLine() : new PlainLine().withoutAccumulator())
                    .coils(coil(length))
                    .entry(2.5, up, down)
                    .process(speed, up, down)
                    .join(10)
                    .downtime(Distribution.constant(due), Distribution.constant(20))
                    .run(1);
            ChangeRecord change = run.changes().get(0);

            // Before the stop, or when the line runs again after it.
            double afterStop = due + speed / down + 20;
            assertThat(change.start())
                    .satisfiesAnyOf(
                            start -> assertThat(start)
                                    .isCloseTo((length - speed * speed / (2 * down)) / speed, within(1e-6)),
                            start -> assertThat(start).isCloseTo(afterStop, within(1e-5)));
            assertThat(run.totals().enteredMetres()).isLessThan(2 * length + 1e-6);
            assertThat(change.tailStopped()).isLessThan(afterStop + 1);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void jointEndsExactlyWhenTheAccumulatorIsEmpty_lineKeepsRunning(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            double speed = random.nextDouble(0.5, 2);
            double capacity = random.nextDouble(10, 300);
            // Speeds jump: the level is 0 when the joint has taken C/V.
            Replication run = new PlainLine()
                    .coils(coil(random.nextDouble(2000, 3000)))
                    .entry(2.5, AT_ONCE, AT_ONCE)
                    .process(speed, AT_ONCE, AT_ONCE)
                    .capacity(capacity)
                    .join(capacity / speed)
                    .run(20);

            assertThat(run.totals().starvedStops()).isEqualTo(0);
            assertThat(run.totals().ranThrough()).isEqualTo(20);
            assertThat(run.totals().stripBreaks()).isEqualTo(0);
            assertThat(run.totals().lowestLevel()).isCloseTo(0, within(1e-9 * capacity));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void lowestLevelIsExactlyTheStopLevel_lineKeepsRunning(int seed) {
        // Rule NUM-3.
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            double speed = random.nextDouble(0.5, 2);
            double up = random.nextDouble(0.2, 1);
            double down = random.nextDouble(0.2, 1);
            double processDown = random.nextDouble(0.1, 1);
            double reserve = random.nextDouble(0, 5);
            double joint = random.nextDouble(10, 100);
            // Drawn V T + V^2/(2 d_e) + V^2/(2 a_e), down to R + V^2/(2 d_p) exactly.
            double half = speed * speed / 2;
            double capacity = speed * joint + half / down + half / up + reserve + half / processDown;
            Replication run = new PlainLine()
                    .coils(coil(2000))
                    .entry(4, up, down)
                    .process(speed, 0.3, processDown)
                    .capacity(capacity)
                    .reserve(reserve)
                    .join(joint)
                    .run(5);

            assertThat(run.totals().starvedStops()).isEqualTo(0);
            assertThat(run.changes().get(0).lowestAboveStopLevel()).isCloseTo(0, within(1e-9 * capacity));
        }
    }

    @Test
    void jointAMomentLongerThanTheAccumulatorLasts_isAStop() {
        // Rule NUM-3.
        Replication run = new PlainLine().join(200 / 1.5 + 1e-6).run(1);

        assertThat(run.totals().starvedStops()).isEqualTo(1);
        assertThat(run.changes().get(0).outcome()).isEqualTo(Outcome.STOPPED);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void jointReachesTheProcessAsTheCoilChangeStarts(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            double capacity = random.nextDouble(50, 300);
            double slow = random.nextDouble(0.5, 1);
            // Joint of no time: the new coil reaches the process C metres on; it is just as long as that.
            Replication run = new PlainLine()
                    .coils(PlainLine.coilAt(capacity, 1.5), PlainLine.coilAt(capacity, slow))
                    .entry(2.5, AT_ONCE, AT_ONCE)
                    .process(1.5, AT_ONCE, AT_ONCE)
                    .capacity(capacity)
                    .join(0)
                    .run(5);

            double fast = capacity / 1.5;
            assertThat(run.changes().get(2).start()).isCloseTo(2 * fast + capacity / slow, within(1e-6));
            assertThat(run.changes().get(3).start()).isCloseTo(3 * fast + capacity / slow, within(1e-6));
        }
    }
}
