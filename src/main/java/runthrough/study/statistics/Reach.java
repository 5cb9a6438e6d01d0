package runthrough.study.statistics;

import java.util.List;
import java.util.Optional;

/**
 * How far an interval reaches from its estimate.
 *
 * @param below to its lower end, {@code >= 0}
 * @param above to its upper end, {@code >= 0}
 */
record Reach(double below, double above) {
    static final Reach NONE = new Reach(0, 0);

    /** That of Student's t over {@code values}; none where they do not differ. */
    static Reach byT(double confidence, double[] values) {
        return Estimators.mean(confidence, values)
                .interval()
                .map(interval -> new Reach(interval.halfWidth(), interval.halfWidth()))
                .orElse(NONE);
    }

    /** That of {@code limits} from {@code mean}. */
    static Reach of(FewEvents.Limits limits, double mean) {
        return new Reach(Math.max(0, mean - limits.low()), Math.max(0, limits.high() - mean));
    }

    /** That of a sum of what is independent. */
    static Reach together(List<Reach> parts) {
        return parts.stream()
                .reduce(
                        NONE,
                        (sum, part) -> new Reach(Math.hypot(sum.below, part.below), Math.hypot(sum.above, part.above)));
    }

    /** The interval around {@code mean}, cut where it leaves what is possible; empty without a width. */
    Optional<Interval> around(double mean, double least, double most, Interval.Method method) {
        double low = Math.max(least, mean - below);
        double high = Math.min(most, mean + above);
        return high - low > Estimators.ROUNDING * Math.abs(mean)
                ? Optional.of(new Interval(low, high, method))
                : Optional.empty();
    }
}
