package runthrough.handcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.plant.SoundLine;

/**
 * An accumulator of 100 m before a process of 1.5 m/s, ramps of the entry 0.4 m/s2 up and 0.5 m/s2 down, of the process 0.5 m/s2
 * down, that slows to 0.5 m/s below 40 m. Stop level 1.5^2/(2 0.5) = 2.25 m.
 */
class SlowingFormsTest {
    private static final double EXACT = 1e-9;
    private static final Slowing SLOWING = new Slowing(0.5, 40, 70);

    private final SlowingForms forms =
            SlowingForms.of(ClosedForms.of(line(), line().coils().get(0)), SLOWING);

    private static Line line() {
        ProcessSection process = ProcessSection.running(1.5, 0.2, 0.5).withSlowing(Optional.of(SLOWING));
        return SoundLine.line()
                .capacity(100)
                .process(process)
                .join(SoundLine.timed("weld", Distribution.constant(60)))
                .build();
    }

    @Test
    void toRunThrough_theLevelAtWhichItSlowsIsInThePlaceOfTheStopLevel() {
        // Rule FORM-7.
        // (100 - 40)/V - V/(2 d_e) - V/(2 a_e) with V = 1.5 and the entry's ramps.
        StopAndGo entry = forms.forms().entry();
        double longest = 60 / 1.5 - 1.5 / (2 * entry.deceleration()) - 1.5 / (2 * entry.acceleration());
        assertThat(forms.atRatedSpeed().longestJoint()).isCloseTo(longest, within(EXACT));
        assertThat(forms.fastestAtRatedSpeed(longest)).isCloseTo(1.5, within(EXACT));
    }

    @Test
    void withoutAStop_itRunsDownToTheStopLevelAtTheSlowedSpeed() {
        // Rule FORM-13.
        // Until x_slow at 1.5 m/s, the entry having let in V^2/(2 d_e); 2 s of ramp; then at 0.5 m/s down to the stop
        // level, of
        // which the entry, speeding up again, leaves 0.5^2/(2 a_e).
        StopAndGo entry = forms.forms().entry();
        double first = (60 - 1.5 * 1.5 / (2 * entry.deceleration())) / 1.5;
        double last = (40 - 2.25 - 0.25 / (2 * entry.acceleration())) / 0.5;
        double longest = first + (1.5 - 0.5) / 0.5 + last;
        assertThat(forms.longestWithoutStop()).isCloseTo(longest, within(EXACT));
        assertThat(forms.fastestWithoutStop(longest)).isCloseTo(1.5, within(EXACT));
        assertThat(forms.fastestWithoutStop(longest + 5)).isLessThan(1.5);
    }

    @Test
    void aSpeedBelowTheSlowedOneNeverSlows() {
        // Rule FORM-13.
        double joint = forms.forms().holding(100).longestJoint() * 10;
        assertThat(forms.fastestWithoutStop(joint)).isEqualTo(forms.forms().fastestSpeed(joint));
    }
}
