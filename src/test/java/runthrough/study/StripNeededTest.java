package runthrough.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.simulation.ChangeRecord;
import runthrough.simulation.Outcome;

class StripNeededTest {

    @Test
    void aMatchedEntryDrawsJointTimeAndBothRamps() {
        // Rule MARGIN-1.
        // V T + V^2/(2 d_e) + V^2/(2 a_e) = 40 + 1 + 1
        Line line = HandMade.line(Distribution.constant(40));

        assertThat(new StripNeeded(line).of(HandMade.ranThrough(40))).isCloseTo(42, within(1e-12));
    }

    @Test
    void creepingDrawsMore() {
        // Rule MARGIN-1.
        // Creep at 0.2 m/s over the last 2 m: slow 1.6 s, creep (2 - 0.04)/0.2 = 9.8 s, stop 0.4 s. To the 42 m come
        // (V - v_c)(l_c - v_c^2/(2 d_e))/v_c = 0.8 * 1.96 / 0.2 = 7.84 m.
        assertThat(creeping().of(from(100, 111.8))).isCloseTo(49.84, within(1e-12));
    }

    @Test
    void whereCreepSpeedIsAlreadyHeld_onlyTheRestOfTheCreepIsPassed() {
        // 5 s of creep and 0.4 s to stop pass 1.04 m: 45.4 s at 1 m/s + 1 m - 1.04 m.
        assertThat(creeping().of(from(100, 105.4))).isCloseTo(45.36, within(1e-12));
    }

    @Test
    void withoutDecelerationNothingPassesOnceTheTailIsThere() {
        Line line = withEntry(new Entry(2, 2, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Optional.empty(), 0));

        assertThat(new StripNeeded(line).of(from(100, 100))).isEqualTo(40);
    }

    @Test
    void withoutDecelerationTheCreepLengthPassesAtCreepSpeed() {
        // 2 m at 0.2 m/s take 10 s, in which the process runs 10 m.
        Line line = withEntry(new Entry(
                2, 2, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Optional.of(new Entry.Creep(0.2, 2)), 0));

        assertThat(new StripNeeded(line).of(from(100, 110))).isCloseTo(48, within(1e-12));
    }

    @Test
    void ratedSpeedIsThatOfTheEndingCoil() {
        // Rule MARGIN-1.
        assertThat(new StripNeeded(twoSpeeds()).ratedSpeed(at(1, HandMade.STOP_LEVEL / 4)))
                .isEqualTo(0.5);
    }

    @Test
    void ratedSpeedIsThatOfTheCoilBeforeWhileItsStripIsStillInTheProcess() {
        // The stop level at T0 tells: 1 m = V^2 / (2 * 0.5).
        assertThat(new StripNeeded(twoSpeeds()).ratedSpeed(at(1, HandMade.STOP_LEVEL)))
                .isCloseTo(1, within(1e-12));
    }

    private static StripNeeded creeping() {
        return new StripNeeded(withEntry(new Entry(2, 2, 0.5, 0.5, Optional.of(new Entry.Creep(0.2, 2)), 0)));
    }

    private static Line withEntry(Entry entry) {
        Line line = HandMade.line(Distribution.constant(40));
        return new Line(
                line.coilSource(),
                entry,
                line.accumulator(),
                line.process(),
                line.change(),
                line.practice(),
                line.bending());
    }

    private static Line twoSpeeds() {
        return HandMade.line(
                Distribution.constant(40),
                Practice.JOIN_WITH_ACCUMULATOR,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(0.5));
    }

    /** A joint of 40 s after the entry slowed from {@code start} to {@code tailStopped}. */
    private static ChangeRecord from(double start, double tailStopped) {
        return new ChangeRecord(
                1, 0, 0, start, tailStopped, tailStopped + 40, 0, 1, 50, 8, 1, Outcome.RAN_THROUGH, 0, 0, Double.NaN);
    }

    private static ChangeRecord at(int tailCoil, double stopLevel) {
        return new ChangeRecord(
                1, tailCoil, 0, 100, 102, 142, 0, 1, 50, 8, stopLevel, Outcome.RAN_THROUGH, 0, 0, Double.NaN);
    }
}
