package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * How closely the engine must give what the hand calculation gives: to 1e-9 of the value, and for small values 1e-7. A level is
 * below a threshold only when it is so by 1e-10 of the capacity, which for 200 m puts a stop off by 2e-8 m.
 */
public final class Near {

    private Near() {}

    public static void assertNear(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(1e-9 * Math.max(100, Math.abs(expected))));
    }
}
