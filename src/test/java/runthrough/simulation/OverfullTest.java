package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.PlainLine.AT_ONCE;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.Totals;

class OverfullTest {

    @Test
    void aLevelThatComesBackWithinTheAllowanceAndLeavesItAgainIsOverfullTwice() {
        // Rule ACC-9.
        // From 2 m/s the process stops at 0.1 m/s2 over 20 m, the entry at 0.05 m/s2 over 40 m: the downtime at 100 s
        // leaves
        // 20 m above the capacity of 100 m, past the allowance of 8 m. Both start again at 220 s, and 398 m into the
        // coil,
        // at 299 s, the entry slows to 1 m/s for its tail, which takes 20 s and draws 10 m. At 320 s the level is 109 m
        // and
        // the next downtime begins: t seconds on the level is 109 - t + 0.05 t^2, down to 104 m and up to 109 m again
        // before the process has come to rest.
        Totals totals = new PlainLine()
                .coils(PlainLine.coil(468))
                .entry(3, AT_ONCE, 0.05)
                .creep(1, 40)
                .capacity(100)
                .allowance(8)
                .process(2, AT_ONCE, 0.1)
                .downtime(Distribution.constant(100), Distribution.constant(100))
                .join(60)
                .runFor(345)
                .totals();

        assertThat(totals.overtravel()).isCloseTo(20, within(1e-9));
        assertThat(totals.overfull()).isEqualTo(2);
    }
}
