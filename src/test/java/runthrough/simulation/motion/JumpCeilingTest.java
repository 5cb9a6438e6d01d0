package runthrough.simulation.motion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Entry.Creep;
import runthrough.simulation.PlainLine;
import runthrough.simulation.records.Totals;

/** How fast the entry may be so that the tail still comes to rest in the joiner, also where nothing is left of it. */
class JumpCeilingTest {
    private static final double AT_ONCE = Double.POSITIVE_INFINITY;
    private static final Optional<Creep> NO_CREEP = Optional.empty();
    private static final Optional<Creep> CREEP = Optional.of(new Creep(0.5, 5));

    @Test
    void fastestSpeedIsTheOneThatTheRestOfTheCoilIsLongEnoughToStopFrom() {
        // Rule ENTRY-22.
        // sqrt(2 * 0.5 * 4) = 2
        assertThat(new RunOut(0.5, NO_CREEP).jumpCeiling(4)).isEqualTo(2);
        // sqrt(0.5^2 + 2 * 0.5 * (11 - 5)) = 2.5
        assertThat(new RunOut(0.5, CREEP).jumpCeiling(11)).isEqualTo(2.5);
    }

    @Test
    void nothingLeft_evenLessByRounding_meansNextToNoSpeed_soThatTheCoilChangeCanStart() {
        // Rule ENTRY-22.
        assertThat(new RunOut(0.4, NO_CREEP).jumpCeiling(0)).isPositive().isLessThan(1e-100);
        assertThat(new RunOut(0.4, NO_CREEP).jumpCeiling(-1e-14)).isPositive().isLessThan(1e-100);
        assertThat(new RunOut(0.4, CREEP).jumpCeiling(5)).isEqualTo(0.5);
    }

    @Test
    void stoppingAtOnce_takesNoStrip_soThatAnySpeedWillDo() {
        assertThat(new RunOut(AT_ONCE, NO_CREEP).jumpCeiling(0)).isEqualTo(AT_ONCE);
        assertThat(new RunOut(AT_ONCE, NO_CREEP).jumpCeiling(-1e-14)).isEqualTo(AT_ONCE);
        assertThat(new RunOut(AT_ONCE, CREEP).jumpCeiling(5)).isEqualTo(AT_ONCE);
    }

    @Test
    void oneStripThatStopsAtOnce_goesOnAfterEachChange() {
        // 600 m at 1.5 m/s, then 60 s of joint: five of each, and the run-out of the sixth coil.
        Totals totals = new PlainLine()
                .rethread(Distribution.constant(60))
                .process(1.5, AT_ONCE, AT_ONCE)
                .totals(5, 0, 1, 7)
                .get(0);

        assertThat(totals.duration()).isEqualTo(6 * 400 + 5 * 60);
        assertThat(totals.stoppedChanges()).isEqualTo(5);
    }

    @Test
    void oneStripThatCreepsAndStopsAtOnce_goesOnAfterEachChange() {
        // 594 m at 1.5 m/s, 6 m at 0.5 m/s, 60 s of joint; the last T0 is where the sixth coil begins to creep.
        Totals totals = new PlainLine()
                .withoutAccumulator()
                .creep(0.5, 6)
                .join(60)
                .totals(5, 0, 1, 7)
                .get(0);

        assertThat(totals.duration()).isEqualTo(6 * 396 + 5 * (12 + 60));
    }
}
