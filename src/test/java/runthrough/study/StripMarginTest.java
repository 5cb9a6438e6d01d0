package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.records.Outcome.RAN_THROUGH;
import static runthrough.simulation.records.Outcome.SLOWED;
import static runthrough.simulation.records.Outcome.STOPPED;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.ProcessSection;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.margin.StripMargin;

/** A joint of T seconds needs T + 2 metres; the stop level is 1 m. */
class StripMarginTest {
    private final StripMargin spare = new StripMargin(HandMade.line(Distribution.constant(40)));

    /** Slows below 10 m. */
    private final StripMargin slowing = new StripMargin(HandMade.line(
            Distribution.constant(40),
            HandMade.STORED,
            Optional.empty(),
            Optional.of(new ProcessSection.Slowing(0.5, 10, Double.NaN)),
            OptionalDouble.empty()));

    @Test
    void metresAreTheMarginOfACoilChangeThatRanThrough() {
        // Rule MARGIN-2.
        // 50 - 42 - 1, at 1 m/s
        assertThat(spare.metres(HandMade.ranThrough(40))).isEqualTo(7);
        assertThat(seconds(HandMade.ranThrough(40))).isEqualTo(7);
    }

    @Test
    void shortfallIsCalculatedWithTheProcessKeptAtItsSpeed_notFromTheLevelAtWhichItStopped() {
        // Rule MARGIN-2.
        // 62 m needed, 49 there: 13 missing, although the level never fell more than half a metre below the stop level.
        ChangeRecord stopped = HandMade.change(50, 60, 0, 0.5, STOPPED);

        assertThat(spare.metres(stopped)).isCloseTo(-13, within(1e-12));
        assertThat(seconds(stopped)).isCloseTo(-13, within(1e-12));
    }

    @Test
    void speedToSpareIsTheRootOfTheClosedForm() {
        // Rule MARGIN-3.
        // 3 V^2 + 40 V - 50 = 0: V = (sqrt(2200) - 40) / 6 = 1.150693; of 60 s (sqrt(4200) - 60) / 6 = 0.801234.
        assertThat(spare.speed(HandMade.ranThrough(40))).isCloseTo(0.150693, within(1e-6));
        assertThat(spare.speed(HandMade.change(50, 60, 0, 0.5, STOPPED))).isCloseTo(-0.198766, within(1e-6));
    }

    @Test
    void speedToSpareCountsTheStripHeldAtTheStart() {
        // Rule MARGIN-3.
        // 3 V^2 + 40 V - 30 = 0: V = (sqrt(1960) - 40) / 6 = 0.711981
        assertThat(spare.speed(HandMade.change(30, 40, 0, 0.5, STOPPED))).isCloseTo(-0.288019, within(1e-6));
        assertThat(spare.speed(HandMade.change(0, 40, 0, 0, STOPPED))).isEqualTo(-1);
    }

    @Test
    void theProcessCannotBeFasterThanTheEntry() {
        // Rule MARGIN-3.
        // 3 V^2 + 2 V - 50 = 0 gives 3.76 m/s; the entry runs at 2.
        assertThat(spare.speed(HandMade.ranThrough(2))).isEqualTo(1);
    }

    @Test
    void aProcessThatSlowsIsHeldAgainstTheLevelAtWhichItDoes() {
        // Rules MARGIN-1, MARGIN-3.
        // 50 - 42 - 10; 2 V^2 + 40 V - 40 = 0: V = (sqrt(1920) - 40) / 4 = 0.954451
        ChangeRecord slowed = HandMade.change(50, 40, 0, 9, SLOWED);

        assertThat(slowing.metres(slowed)).isCloseTo(-2, within(1e-12));
        assertThat(slowing.speed(slowed)).isCloseTo(-0.045549, within(1e-6));
        assertThat(slowing.metres(HandMade.change(50, 30, 0, 18, RAN_THROUGH))).isEqualTo(8);
    }

    private double seconds(ChangeRecord change) {
        return spare.seconds(change, spare.metres(change));
    }
}
