package runthrough.study.margin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.builder.LineBuilder;

/**
 * 120 m before a process that slows below 45 m to 0.4 m/s at 0.4 m/s2; entry 0.05 m/s2 down, so that it takes V^2/0.1 m to stop; no
 * reserve, so that the stop level is V^2/0.8.
 */
class MarginAsSpeedTest {

    @Test
    void theClosedFormHoldsWhereTheProcessSlowsWhileTheEntryStands() {
        // Rules MARGIN-5, FORM-13. 120 - 45 = 75 m are left for the entry's stop: V^2/0.1 = 75 at V = 2.7386 m/s.
        assertThat(at(1.5).holdsWithoutStop(2.738 - 1.5)).isTrue();
        assertThat(at(1.5).holdsWithoutStop(2.739 - 1.5)).isFalse();
        // What counts is the speed that the margin stands for, not the one that the line has.
        assertThat(at(2.9).holdsWithoutStop(2.738 - 2.9)).isTrue();
    }

    @Test
    void aProcessThatSlowsIsFasterThanItsSlowedSpeed() {
        // Rule FORM-13: the slowed speed, 0.4 m/s, is reached from above only.
        assertThat(at(1.5).holdsWithoutStop(0.401 - 1.5)).isTrue();
        assertThat(at(1.5).holdsWithoutStop(0.4 - 1.5)).isFalse();
    }

    private static StripMargin at(double speed) {
        Line line = new LineBuilder()
                .coil("strip", 0.001, 1, 7850, Distribution.constant(6000))
                .entry(4, 0.2, 0.05)
                .capacity(120)
                .process(speed, 0.3, 0.4)
                .slowing(0.4, 45, 30)
                .join("weld", Distribution.constant(90))
                .describe();
        return new StripMargin(line);
    }
}
