package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.simulation.Kinematics.NEVER;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Roots of {@code b t + c t^2 = rise}, the earliest at or after now. */
class KinematicsTest {

    @ParameterizedTest
    @CsvSource({
        // rise, b, c, time
        "0,    1,   1,   0", // there already
        "-3,   1,   1,   0",
        "6,    2,   0,   3", // steady
        "6,    0,   0,   Infinity", // stands
        "6,   -2,   0,   Infinity", // goes the other way
        "6,    1,   1,   2", // 1 2 + 4
        "6,   -1,   1,   3", // -3 + 9: falls first, then rises
        "6,    5,  -1,   2", // 10 - 4: the earlier of 2 and 3
        "6.25, 5,  -1,   2.5", // touches at its peak
        "6.26, 5,  -1,   Infinity", // peaks below
        "6,   -5,  -1,   Infinity",
        "4,    0,   1,   2",
        "4,    0,  -1,   Infinity"
    })
    void timeToRise(double rise, double b, double c, double time) {
        // Rules MOTION-2, NUM-2.
        assertThat(Kinematics.rise(rise, b, c)).isEqualTo(time);
    }

    @Test
    void nearlySteadyMotionLosesNoDigits() {
        // Rule NUM-2.
        // 1 = t + 1e-17 t^2: t = 1 - 1e-17; the schoolbook form gives (-1 + 1)/2e-17 = 0.
        assertThat(Kinematics.rise(1, 1, 1e-17)).isEqualTo(1);
        assertThat(Kinematics.rise(1, 1, -1e-17)).isEqualTo(1);
        // 1 = t + 1e-9 t^2 to the last digits: t = 1 - 1e-9 + 2e-18 - ...
        assertThat(Kinematics.rise(1, 1, 1e-9)).isCloseTo(1 - 1e-9, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({
        // value, b, c, time to be below 0 and falling, with no slack
        "6,  -2,  0,  3",
        "6,  -1, -1,  2",
        "6,   2,  0,  Infinity",
        "6,  -5,  1,  2", // 6 - 10 + 4
        "6.26, -5, 1, Infinity", // turns above
        "-1, -2,  0,  0", // below and falling: at once
        "-1, -2,  5,  0",
        "-1,  2,  0,  Infinity", // below, but rising for good
        "-1,  2,  1,  Infinity",
        "-1,  0,  0,  Infinity", // below, but still
        "-1,  0, -1,  0",
        "-3,  2, -1,  1", // below, rises to -2 at 1 s and falls again
        "-3,  4, -1,  3", // rises above 0 at 1 s, falls through it at 3 s
        "-1.5, 2, -0.5, 3", // the same at half the rate
        "-2,  1, -0.5, 1" // peaks at -1.5 after 1 s
    })
    void timeToFallBelow(double value, double b, double c, double time) {
        assertThat(Kinematics.fallBelow(value, b, c, 0)).isEqualTo(time);
    }

    @Test
    void touchIsNoFall_belowByMoreThanTheSlackIs() {
        // Rule NUM-3.
        // 4 - 4 t + t^2 touches 0 at 2 s.
        assertThat(Kinematics.fallBelow(4, -4, 1, 1e-9)).isEqualTo(NEVER);
        assertThat(Kinematics.fallBelow(4 - 2e-9, -4, 1, 1e-9)).isCloseTo(2, within(1e-4));
        // Exactly at 0 and falling: below the slack only after a while.
        assertThat(Kinematics.fallBelow(0, -1, 0, 1e-9)).isEqualTo(1e-9);
        // Within the slack of 0 and rising.
        assertThat(Kinematics.fallBelow(-1e-10, 1, 0, 1e-9)).isEqualTo(NEVER);
    }

    @Test
    void rampDistances() {
        assertThat(Kinematics.rampDistance(1.5, 0.5)).isEqualTo(2.25);
        assertThat(Kinematics.rampDistance(1.5, Double.POSITIVE_INFINITY)).isEqualTo(0);
    }

    @Test
    void timeToTravel() {
        // 2.25 m from 1.5 m/s at -0.5 m/s2: 3 s, at rest there; 2.26 m never.
        assertThat(Kinematics.travel(2.25, 1.5, -0.5)).isEqualTo(3);
        assertThat(Kinematics.travel(2.26, 1.5, -0.5)).isEqualTo(NEVER);
        assertThat(Kinematics.travel(-1e-14, 0, 0)).isEqualTo(0);
    }
}
