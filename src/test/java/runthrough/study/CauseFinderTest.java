package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.simulation.Outcome.SLOWED;
import static runthrough.simulation.Outcome.STOPPED;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;

/** A joint of T seconds needs T + 2 metres; a full accumulator has 50 - 1 = 49 above the stop level. */
class CauseFinderTest {
    private final CauseFinder finder = new CauseFinder(HandMade.line(Distribution.constant(40)));

    @Test
    void aCoilChangeThatRanThroughHasNoCause() {
        assertThat(finder.causeOf(HandMade.ranThrough(40))).isEmpty();
    }

    @Test
    void preparation_withoutTheWaitTheStripWouldHaveLasted() {
        // Rule CAUSE-3.
        // 62 m needed, 49 there; without the wait of 20 s it is 42.
        assertThat(finder.causeOf(HandMade.change(50, 60, 20, 0.5, STOPPED))).contains(Cause.PREPARATION);
    }

    @Test
    void aWaitThatDidNotDecideIsNotBlamed() {
        // Rules CAUSE-3, CAUSE-5.
        // 72 m needed, 67 without the wait.
        assertThat(finder.causeOf(HandMade.change(50, 70, 5, 0.5, STOPPED))).contains(Cause.CAPACITY);
    }

    @Test
    void refill_aFullAccumulatorWouldHaveLasted() {
        // Rule CAUSE-4.
        // 42 m needed, 30 - 1 there, 49 when full.
        assertThat(finder.causeOf(HandMade.change(30, 40, 0, 0.5, STOPPED))).contains(Cause.REFILL);
    }

    @Test
    void refill_alsoWhenTheWaitAloneDidNotDecide() {
        // Rule CAUSE-4.
        // 52 m needed; 42 without the wait are still more than 30 - 1, but not than 49.
        assertThat(finder.causeOf(HandMade.change(30, 50, 10, 0.5, STOPPED))).contains(Cause.REFILL);
    }

    @Test
    void capacity_aFullAccumulatorWouldNotHaveLasted() {
        // Rule CAUSE-5.
        assertThat(finder.causeOf(HandMade.change(50, 60, 0, 0.5, STOPPED))).contains(Cause.CAPACITY);
        assertThat(finder.causeOf(HandMade.change(30, 60, 0, 0.5, STOPPED))).contains(Cause.CAPACITY);
    }

    @Test
    void stripThatLastsToTheLastMillimetreLasts() {
        // Rule CAUSE-5.
        // Without the wait exactly the 49 m that are there.
        assertThat(finder.causeOf(HandMade.change(50, 67, 20, 0.5, STOPPED))).contains(Cause.PREPARATION);
    }

    @Test
    void slowing_isHeldAgainstTheLevelAtWhichItBegins() {
        // Rule MARGIN-1.
        // 42 m needed; above the slowing level of 10 m there are 40, above the stop level there would be 49.
        CauseFinder slowing = new CauseFinder(HandMade.line(
                Distribution.constant(40),
                Practice.JOIN_WITH_ACCUMULATOR,
                Optional.empty(),
                Optional.of(new ProcessSection.Slowing(0.5, 10, Double.NaN)),
                OptionalDouble.empty()));

        assertThat(slowing.causeOf(HandMade.change(50, 40, 0, 9, SLOWED))).contains(Cause.CAPACITY);
    }

    @Test
    void aStopHandedOnIsLaidToWhatTheEarlierOneWas() {
        // Rule CAUSE-2.
        finder.causeOf(HandMade.change(50, 60, 20, 0.5, STOPPED));

        assertThat(finder.causeOf(HandMade.change(50, 40, 0, 8, STOPPED))).contains(Cause.PREPARATION);
    }

    @Test
    void nothingIsHandedOnPastACoilChangeThatRanThroughOrIntoTheNextReplication() {
        // Rule CAUSE-2.
        finder.causeOf(HandMade.change(50, 60, 20, 0.5, STOPPED));
        finder.causeOf(HandMade.ranThrough(40));
        assertThat(finder.causeOf(HandMade.change(50, 40, 0, 8, STOPPED))).contains(Cause.CAPACITY);

        finder.causeOf(HandMade.change(50, 60, 20, 0.5, STOPPED));
        finder.startReplication();
        assertThat(finder.causeOf(HandMade.change(50, 40, 0, 8, STOPPED))).contains(Cause.CAPACITY);
    }

    @Test
    void whereEntryAndProcessAreOneStripThePracticeIsTheCause() {
        // Rule CAUSE-1.
        CauseFinder oneStrip = new CauseFinder(HandMade.line(
                Distribution.constant(40),
                Practice.RETHREAD,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty()));

        assertThat(oneStrip.causeOf(HandMade.change(0, 40, 40, 0, STOPPED))).contains(Cause.PRACTICE);
    }
}
