package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.PlainLine.AT_ONCE;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.simulation.records.Totals;

class BlockedEntryTest {

    @Test
    void entryStandsBlockedFromTheInstantItStopsForAFullAccumulatorThoughTheProcessIsStillSlowingDown() {
        // Rules ENTRY-19, REPORT-11.
        // T0 = T1 = 1000/2 = 500 s, T2 = 530 s with 200 - 60 = 140 m; at 540 s, with 150 m, the process begins to stop
        // for
        // itself at 0.02 m/s2. t seconds on the level is 150 + 3 t - (2 t - 0.01 t^2) and the settled level
        // 150 + t + 0.01 t^2 - (2 - 0.02 t)^2/0.04 = 50 + 3 t, which is the capacity at t = 50. There the entry stops
        // at
        // once, with 225 m; the process comes to rest at t = 100, with 200 m, and stands for 100 s.
        Totals totals = new PlainLine()
                .coils(PlainLine.coil(1000))
                .entry(3, AT_ONCE, AT_ONCE)
                .process(2, AT_ONCE, 0.02)
                .downtime(Distribution.constant(540), Distribution.constant(100))
                .join(30)
                .run(1)
                .totals();

        assertThat(totals.overtravel()).isCloseTo(25, within(1e-9));
        assertThat(totals.blockedSeconds()).isCloseTo(150, within(1e-9));
    }
}
