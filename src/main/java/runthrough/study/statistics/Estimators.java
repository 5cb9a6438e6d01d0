package runthrough.study.statistics;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * How estimates are made from independent replications.
 *
 * <p>The mean is that of the replications' own values, ratios included. Its interval is Student's t over them, which needs
 * nothing to be known of how coil changes of one replication hang together. Where it fails to be honest another takes its
 * place, or none:
 *
 * <ul>
 *   <li>A single replication, or several that all gave the same but for rounding: no t interval.
 *   <li>A share: Wilson's interval from the pooled counts in these cases, and also when fewer than {@value #FEW} trials went
 *       the one way or the other, for t is too narrow and reaches beyond 0 or 1 there. If shares spread more between
 *       replications than independent trials would, the pooled count is lowered by that factor (the design effect), and since
 *       the factor itself is known from so many replications only, once more by the square of the ratio of Student's t to the
 *       normal deviate. Source: E. L. Korn and B. I. Graubard, "Confidence intervals for proportions with small expected
 *       number of positive counts estimated from survey data", Survey Methodology 24, 1998 (from memory); there with the exact
 *       interval of the binomial in place of Wilson's.
 *   <li>A rate of events, and what depends on events that are few: by their count, see {@link FewEvents}. Of a rate of events of
 *       which none was seen that is from 0 to 3 over the exposure, the rule of three.
 * </ul>
 *
 * <p>Rules REPORT-12, REPORT-13.
 */
public final class Estimators {
    /** With fewer successes or failures than this a share's interval is Wilson's. */
    static final int FEW = 30;

    /** An interval of less than this part of its mean comes from rounding alone. */
    static final double ROUNDING = 1e-12;

    /** A design effect of no more than this beyond 1 comes from rounding alone. */
    private static final double SPREAD = 1e-9;

    private Estimators() {}

    /** The mean of one value from each replication; at least one. */
    public static Estimate mean(double... values) {
        return mean(Interval.CONFIDENCE, values);
    }

    /** The mean of {@code values}, its interval with another {@code confidence}, in (0, 1). */
    static Estimate mean(double confidence, double[] values) {
        return studentT(confidence, Moments.of(values), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The mean of one value from each replication that cannot be negative; nor can the ends of its interval. */
    public static Estimate amount(double... values) {
        return studentT(Interval.CONFIDENCE, Moments.of(values), 0, Double.POSITIVE_INFINITY);
    }

    /**
     * A share of trials; replications without trials are left out.
     *
     * @param successes of each replication
     * @param trials of each replication, at least one of them {@code > 0}
     */
    public static Estimate share(long[] successes, long[] trials) {
        return share(Interval.CONFIDENCE, successes, trials);
    }

    /** The same, its interval with another {@code confidence}, in (0, 1). */
    static Estimate share(double confidence, long[] successes, long[] trials) {
        Moments moments = Moments.of(IntStream.range(0, trials.length)
                .filter(i -> trials[i] > 0)
                .mapToDouble(i -> (double) successes[i] / trials[i])
                .toArray());
        long allTrials = LongStream.of(trials).sum();
        long allSuccesses = LongStream.of(successes).sum();
        Estimate byT = studentT(confidence, moments, 0, 1);
        boolean few = Math.min(allSuccesses, allTrials - allSuccesses) < FEW;
        if (byT.interval().isPresent() && !few) {
            return byT;
        }
        double share = (double) allSuccesses / allTrials;
        Interval wilson = Wilson.interval(confidence, share, allTrials / weight(confidence, moments, share, allTrials));
        return new Estimate(byT.mean(), byT.replications(), byT.sd(), Optional.of(wilson));
    }

    /**
     * A rate of events.
     *
     * @param events of each replication
     * @param exposures of each replication to them, in the unit that the rate is per, {@code > 0}
     */
    public static Estimate rate(long[] events, double[] exposures) {
        return rates(events, exposures).mean(0, Double.POSITIVE_INFINITY);
    }

    /** The same, before its mean is taken. */
    public static SplitValues rates(long[] events, double[] exposures) {
        double[] rates = IntStream.range(0, events.length)
                .mapToDouble(i -> events[i] / exposures[i])
                .toArray();
        return new SplitValues(rates, List.of(EventPart.ofEqual(events, exposures, rates)));
    }

    /** For how many trials of a replication one independent trial stands; at least 1. */
    private static double weight(double confidence, Moments shares, double share, long trials) {
        if (shares.n() == 1 || trials == 1 || !(share > 0 && share < 1)) {
            return 1;
        }
        // Without bias, so that a single failure, which can be in one replication only, shows no spread beyond chance.
        double independent = share * (1 - share) / (trials - 1) * shares.n();
        double effect = shares.sd() * shares.sd() / independent;
        double uncertainty = studentQuantile(confidence, shares.n() - 1) / Wilson.deviate(confidence);
        return effect > 1 + SPREAD ? effect * uncertainty * uncertainty : 1;
    }

    static Estimate studentT(double confidence, Moments moments, double floor, double ceiling) {
        if (moments.n() == 1) {
            return new Estimate(moments.mean(), 1, OptionalDouble.empty(), Optional.empty());
        }
        double half = studentQuantile(confidence, moments.n() - 1) * moments.sd() / Math.sqrt(moments.n());
        double low = Math.max(floor, moments.mean() - half);
        double high = Math.min(ceiling, moments.mean() + half);
        Optional<Interval> interval = high - low > ROUNDING * Math.abs(moments.mean())
                ? Optional.of(new Interval(low, high, Interval.Method.STUDENT_T))
                : Optional.empty();
        return new Estimate(moments.mean(), moments.n(), OptionalDouble.of(moments.sd()), interval);
    }

    /** Student's t for an interval of {@code confidence}, more than 0 and less than 1, with {@code freedom} degrees of freedom. */
    static double studentQuantile(double confidence, int freedom) {
        return TDistribution.of(freedom).inverseCumulativeProbability((1 + confidence) / 2);
    }
}
