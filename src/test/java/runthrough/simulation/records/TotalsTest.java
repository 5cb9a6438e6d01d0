package runthrough.simulation.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import runthrough.simulation.PlainLine;

class TotalsTest {

    /** Levels fall by so much throughout, so their integral by that times the duration; nothing else changes. */
    @Test
    void withALowerLevelOnlyLevelsDiffer() {
        Totals totals = new PlainLine().join(60).run(5).totals();
        Totals lower = totals.withLevelLower(50);

        assertThat(lower.lowestLevel()).isCloseTo(totals.lowestLevel() - 50, within(1e-9));
        assertThat(lower.levelIntegral() / lower.duration())
                .isCloseTo(totals.levelIntegral() / totals.duration() - 50, within(1e-9));
        assertThat(lower.withLevelLower(-50))
                .usingRecursiveComparison()
                .withComparatorForType((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : 1, Double.class)
                .isEqualTo(totals);
    }
}
