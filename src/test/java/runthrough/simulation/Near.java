package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;

/** How closely the engine must give what the hand calculation gives: to 1e-9 of the value, and 1e-9 about zero. */
final class Near {

    private Near() {}

    static void assertNear(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, near(expected));
    }

    static Offset<Double> near(double expected) {
        return within(1e-9 * Math.max(1, Math.abs(expected)));
    }
}
