package runthrough.study.statistics;

import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.StandardDeviation;

/**
 * Mean and standard deviation of some values, in two passes so that a small spread about a large mean is not lost.
 *
 * @param n how many values, {@code >= 1}
 * @param mean of them
 * @param sd with divisor n - 1; NaN for a single value
 */
public record Moments(int n, double mean, double sd) {

    /** The moments of {@code values}, of which there must be at least one. */
    public static Moments of(double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("no values to take a mean of");
        }
        double mean = Mean.of(values).getAsDouble();
        double sd =
                values.length == 1 ? Double.NaN : StandardDeviation.of(values).getAsDouble();
        return new Moments(values.length, mean, sd);
    }

    /** The standard deviation, 0 for a single value. */
    public double sdOrZero() {
        return n == 1 ? 0 : sd;
    }
}
