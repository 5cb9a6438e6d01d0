package runthrough.study.statistics;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.TDistribution;

/** How estimates are made from independent replications. */
public final class Estimators {
    /** Share of the t distribution below the upper end of the interval. */
    private static final double UPPER = (1 + Interval.CONFIDENCE) / 2;

    private Estimators() {}

    /** The mean of one value from each replication, with Student's interval where there are two or more that differ. */
    public static Estimate mean(double... values) {
        Moments moments = Moments.of(values);
        if (moments.n() == 1) {
            return new Estimate(moments.mean(), 1, OptionalDouble.empty(), Optional.empty());
        }
        return new Estimate(moments.mean(), moments.n(), OptionalDouble.of(moments.sd()), studentT(moments));
    }

    private static Optional<Interval> studentT(Moments moments) {
        double t = TDistribution.of(moments.n() - 1).inverseCumulativeProbability(UPPER);
        double half = t * moments.sd() / Math.sqrt(moments.n());
        double low = moments.mean() - half;
        double high = moments.mean() + half;
        return low < high ? Optional.of(new Interval(low, high, Interval.Method.STUDENT_T)) : Optional.empty();
    }
}
