package runthrough.simulation.motion;

/**
 * Times at which quantities that change as {@code b t + c t^2} reach a threshold: roots of quadratics in their stable form,
 * found in closed form. "Never" is positive infinity.
 *
 * <p>Rules MOTION-2, NUM-2.
 */
public final class Kinematics {
    static final double NEVER = Double.POSITIVE_INFINITY;

    private Kinematics() {}

    /**
     * The earliest time (s) at which {@code b t + c t^2} has risen by {@code rise}.
     *
     * @param rise how far to rise; 0 or less is there already
     * @param b rate of change now
     * @param c half the rate of change of the rate
     */
    static double rise(double rise, double b, double c) {
        if (rise <= 0) {
            return 0;
        }
        if (c == 0) {
            return b > 0 ? rise / b : NEVER;
        }
        double discriminant = b * b + 4 * c * rise;
        if (discriminant < 0) {
            return NEVER;
        }
        double root = Math.sqrt(discriminant);
        if (b >= 0) {
            return b + root > 0 ? 2 * rise / (b + root) : NEVER;
        }
        return c > 0 ? (root - b) / (2 * c) : NEVER;
    }

    /**
     * The earliest time (s) at which a value is below {@code -slack} and falling.
     *
     * @param value now
     * @param b its rate of change now
     * @param c half the rate of change of the rate
     * @param slack how far below 0 counts as below, {@code >= 0}
     */
    public static double fallBelow(double value, double b, double c, double slack) {
        double above = value + slack;
        if (above > 0) {
            return rise(above, -b, -c);
        }
        if (b < 0 || (b == 0 && c < 0)) {
            return 0;
        }
        if (c >= 0) {
            return NEVER;
        }
        // Below, rising, and turning: it falls again from its peak, or later where the peak is above.
        double peak = above - b * b / (4 * c);
        return peak <= 0 ? -b / (2 * c) : (b + Math.sqrt(b * b - 4 * c * above)) / (-2 * c);
    }

    /**
     * The time (s) to travel a distance.
     *
     * @param distance (m); 0 or less is there already
     * @param speed now (m/s), {@code >= 0}
     * @param acceleration (m/s2), signed
     */
    static double travel(double distance, double speed, double acceleration) {
        return rise(distance, speed, acceleration / 2);
    }

    /** {@code v^2 / (2 a)}: the distance (m) to change the speed by {@code v} at {@code a}; 0 for an infinite one. */
    static double rampDistance(double v, double a) {
        return v * v / (2 * a);
    }
}
