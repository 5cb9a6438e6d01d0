package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.PlainLine.AT_ONCE;

import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.plant.Distribution;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;

/**
 * What waits for a full accumulator: the entry comes to the process's speed there, so the level only touches the capacity
 * as the last of the speed is spent. The entry is matched first, with the level exactly at the capacity; the process comes
 * after it, at the same instant.
 */
class FullAgainTest {

    /** Capacity (m) and entry deceleration (m/s2). */
    static Stream<Arguments> accumulators() {
        SplittableRandom random = new SplittableRandom(5);
        return Stream.generate(() -> Arguments.of(random.nextDouble(100, 150), random.nextDouble(0.05, 1)))
                .limit(40);
    }

    @ParameterizedTest
    @MethodSource("accumulators")
    void slowedUntilFull_theEntryIsMatchedBeforeTheProcessResumes(double capacity, double down) {
        // Rule NUM-6.
        Replication run = line(capacity, down)
                .slowing(1, 0.95 * capacity, Double.NaN)
                .join(60)
                .run(1);

        ChangeRecord change = run.changes().get(0);
        assertThat(change.outcome()).isEqualTo(Outcome.SLOWED);
        // The process runs at 1 m/s; the entry jumps to at most 3 m/s.
        assertThat(change.refillTime()).isCloseTo(refill(capacity - change.lowestLevel(), 2, down), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("accumulators")
    void stoppedUntilFull_theEntryIsMatchedBeforeTheProcessRestarts(double capacity, double down) {
        // Rule NUM-6.
        Replication run = line(capacity, down)
                .restart(capacity, Distribution.constant(0))
                .join(160)
                .run(1);

        ChangeRecord change = run.changes().get(0);
        assertThat(change.outcome()).isEqualTo(Outcome.STOPPED);
        // The process stands; the entry jumps to at most 3 m/s.
        assertThat(change.refillTime()).isCloseTo(refill(capacity - change.lowestLevel(), 3, down), within(1e-9));
    }

    @Test
    void aCoilChangeWithoutWorkAndWithSpeedChangesAtOnceIsRefilledAtOnce() {
        // T0 = T1 = T2 with the accumulator full throughout.
        assertThat(new PlainLine().run(2).changes())
                .extracting(ChangeRecord::refillTime)
                .containsExactly(0.0, 0.0);
    }

    /** Process 2 m/s and entry 3 m/s with all speed changes at once but the entry's slowing down. */
    private static PlainLine line(double capacity, double down) {
        return new PlainLine()
                .coils(PlainLine.coil(2000))
                .entry(3, AT_ONCE, down)
                .capacity(capacity)
                .process(2, AT_ONCE, AT_ONCE);
    }

    /**
     * Time (s) to gain {@code metres} at {@code most} m/s over the process, or less where the ramp at the end alone would
     * gain more: {@code u t + u^2/(2 d)} metres in {@code t + u/d} seconds.
     */
    private static double refill(double metres, double most, double down) {
        double over = Math.min(most, Math.sqrt(2 * down * metres));
        double steady = (metres - over * over / (2 * down)) / over;
        return steady + over / down;
    }
}
