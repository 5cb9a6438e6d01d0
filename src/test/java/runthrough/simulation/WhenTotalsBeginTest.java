package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import runthrough.simulation.records.Totals;

/**
 * The plain line of {@link PlainLine}: a coil of 600 m lasts 400 s at 1.5 m/s, and the process never stops, so that a coil
 * change starts every 400 s.
 */
class WhenTotalsBeginTest {

    @Test
    void nothingLeftOut_totalsRunFromTimeZero() {
        // Rule TIME-3.
        // From 0 to the start of change 4.
        Totals totals = new PlainLine().join(60).totals(3, 0, 1, 7).get(0);

        assertThat(totals.duration()).isEqualTo(1600);
        assertThat(totals.processedMetres()).isEqualTo(2400);
        assertThat(totals.changes()).isEqualTo(3);
    }

    @Test
    void firstChangeLeftOut_totalsRunFromTheStartOfTheSecond() {
        // Rule TIME-3.
        // From the start of change 2 to that of change 4.
        Totals totals = new PlainLine().join(60).totals(3, 1, 1, 7).get(0);

        assertThat(totals.duration()).isEqualTo(800);
        assertThat(totals.processedMetres()).isEqualTo(1200);
        assertThat(totals.changes()).isEqualTo(2);
    }
}
