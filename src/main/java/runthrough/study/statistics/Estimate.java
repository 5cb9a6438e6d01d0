package runthrough.study.statistics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A quantity measured once in each replication, and how well it is known.
 *
 * @param mean over the replications
 * @param replications that gave a value, {@code >= 1}
 * @param sd standard deviation between replications (divisor n - 1), {@code >= 0}; empty with a single replication
 * @param interval in which the true mean lies; empty where replications cannot tell, because there is only one or because
 *     they did not differ
 */
public record Estimate(double mean, int replications, OptionalDouble sd, Optional<Interval> interval) {

    /** Half the width of the interval, if there is one. */
    public OptionalDouble halfWidth() {
        return interval.map(i -> OptionalDouble.of(i.halfWidth())).orElseGet(OptionalDouble::empty);
    }

    /** The same of what cannot be negative: nor can the ends of its interval. */
    public Estimate notNegative() {
        return within(0, Double.POSITIVE_INFINITY);
    }

    /** The same with an interval that ends where the estimated quantity does. */
    public Estimate within(double least, double most) {
        return new Estimate(
                mean,
                replications,
                sd,
                interval.map(ends -> ends.low() < most && ends.high() > least
                        ? new Interval(Math.max(least, ends.low()), Math.min(most, ends.high()), ends.method())
                        : ends));
    }

    /** The same in another unit: all of it {@code factor} times, {@code factor > 0}. */
    public Estimate times(double factor) {
        return new Estimate(
                factor * mean,
                replications,
                sd.isPresent() ? OptionalDouble.of(factor * sd.getAsDouble()) : sd,
                interval.map(ends -> ends.times(factor)));
    }
}
