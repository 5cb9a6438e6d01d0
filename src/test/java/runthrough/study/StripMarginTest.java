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
        // Rules MARGIN-1, MARGIN-5.
        // x + r - V (T2 - T0) - V^2/(2 a_e) - x_stop = 50 + 1 - 42 - 1 - 1, at 1 m/s
        assertThat(spare.metres(HandMade.ranThrough(40))).isEqualTo(7);
        assertThat(seconds(HandMade.ranThrough(40))).isEqualTo(7);
    }

    @Test
    void shortfallIsCalculatedWithTheProcessKeptAtItsSpeed_notFromTheLevelAtWhichItStopped() {
        // Rule MARGIN-1.
        // 62 m needed, 49 there: 13 missing, although the level never fell more than half a metre below the stop level.
        ChangeRecord stopped = HandMade.change(50, 60, 0, 0.5, STOPPED);

        assertThat(spare.metres(stopped)).isCloseTo(-13, within(1e-12));
        assertThat(seconds(stopped)).isCloseTo(-13, within(1e-12));
    }

    @Test
    void marginAsSpeedIsTheRootOfTheClosedForm() {
        // Rule MARGIN-5.
        // 3 V^2 + 40 V - 50 = 0: V = (sqrt(2200) - 40) / 6 = 1.150693; of 60 s (sqrt(4200) - 60) / 6 = 0.801234.
        assertThat(spare.speed(HandMade.ranThrough(40))).isCloseTo(0.150693, within(1e-6));
        assertThat(spare.speed(HandMade.change(50, 60, 0, 0.5, STOPPED))).isCloseTo(-0.198766, within(1e-6));
    }

    @Test
    void marginAsSpeedCountsTheStripHeldAtTheStart() {
        // Rule MARGIN-5.
        // 3 V^2 + 40 V - 30 = 0: V = (sqrt(1960) - 40) / 6 = 0.711981
        assertThat(spare.speed(HandMade.change(30, 40, 0, 0.5, STOPPED))).isCloseTo(-0.288019, within(1e-6));
        assertThat(spare.speed(HandMade.change(0, 40, 0, 0, STOPPED))).isEqualTo(-1);
    }

    @Test
    void theSpeedKnowsNothingOfTheEntrysTopSpeed() {
        // Rule MARGIN-5.
        // 3 V^2 + 2 V - 50 = 0: V = (sqrt(604) - 2) / 6 = 3.762735, although the entry runs at 2 m/s.
        assertThat(spare.speed(HandMade.ranThrough(2))).isCloseTo(2.762735, within(1e-6));
    }

    @Test
    void aProcessThatSlowsIsHeldAgainstTheLevelAtWhichItDoes() {
        // Rules MARGIN-2, MARGIN-5.
        // 50 - 42 - 10; 2 V^2 + 40 V - 40 = 0: V = (sqrt(1920) - 40) / 4 = 0.954451
        ChangeRecord slowed = HandMade.change(50, 40, 0, 9, SLOWED);

        assertThat(slowing.metres(slowed)).isCloseTo(-2, within(1e-12));
        assertThat(slowing.speed(slowed)).isCloseTo(-0.045549, within(1e-6));
        assertThat(slowing.metres(HandMade.change(50, 30, 0, 18, RAN_THROUGH))).isEqualTo(8);
    }

    @Test
    void withoutAStop_theProcessSlowsAsItDoes() {
        // Rule MARGIN-3.
        // Full, 50 m: V = 1 m/s until 10 m are left, after 2 s of slowing of the entry, which let in 1 m, at 41 s; then
        // 1 s down to
        // 0.5 m/s (0.75 m). A joint of 45 s ends at 47 s: 5 s at 0.5 m/s, and 0.25 m until the entry has that speed
        // again. Left are
        // 10 - 0.75 - 2.5 - 0.25 = 6.5 m, of which 0.25 m are needed to stop from 0.5 m/s.
        assertThat(slowing.metresWithoutStop(HandMade.change(50, 45, 0, 6.5, SLOWED)))
                .isCloseTo(6.25, within(1e-12));
        // Where the level of slowing is not reached it is the margin of the process at its rated speed.
        assertThat(slowing.metresWithoutStop(HandMade.change(50, 30, 0, 18, RAN_THROUGH)))
                .isCloseTo(17, within(1e-12));
        // A process that cannot slow has one margin.
        assertThat(spare.metresWithoutStop(HandMade.change(50, 60, 0, 0.5, STOPPED)))
                .isCloseTo(-13, within(1e-12));
    }

    @Test
    void withoutAStop_theSpeedIsThatOfTheClosedForm() {
        // Rules MARGIN-5, FORM-13.
        // At 1 m/s: (50 - 10 - 1)/1 + (1 - 0.5)/0.5 + (10 - 1 - 0.25)/0.5 = 57.5 s.
        assertThat(slowing.speedWithoutStop(HandMade.change(50, 57.5, 0, 0, SLOWED)))
                .isCloseTo(0, within(1e-9));
    }

    private double seconds(ChangeRecord change) {
        return spare.seconds(change, spare.metres(change));
    }
}
