package runthrough.study.statistics;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * How well a mean is known that rests on events, by their count: N events with effects of mean m and coefficient of variation
 * c, whose numbers spread between replications f times as much as those of independent events would.
 *
 * <p>The sum of such effects (a compound Poisson sum) has the relative variance {@code (f + c^2)/N}, which is that of the count
 * of {@code n = N/(f + c^2)} independent events of equal effect. The lower limit is the gamma quantile {@code G(0.025; n)/n} times
 * the mean. The upper one allows for one event more than were seen, of the effect w (in the sum of all) that is the largest seen,
 * or 1/n where that is more: the quantile 0.975 of the gamma distribution of mean {@code 1 + w} and variance {@code 1/n + w^2}, times
 * the mean. For equal effects of independent events these are exactly the limits of a Poisson count. Student's t over the
 * replications takes over where n is {@value Estimators#FEW} or more.
 *
 * <ul>
 *   <li>f is Pearson's statistic of the counts over its degrees of freedom; where that is significant, times the square of the ratio
 *       of Student's t to the normal deviate, as for a share; at least 1, or where a trial has one event at most the share of trials
 *       without.
 *   <li>c^2 comes from the sums of those replications that have events. As few of them show little of it, one more with {@code
 *       c^2 = 1} is taken in among them: what a stop costs is the excess over what the accumulator bears, and excesses over a
 *       high threshold are about exponential.
 *   <li>None seen: from zero to the effect of 3 events (the rule of three), each of the effect given for one.
 * </ul>
 *
 * <p>Sources, all from memory: F. Garwood, "Fiducial limits for the Poisson distribution", Biometrika 28, 1936; M. P. Fay and
 * E. J. Feuer, "Confidence intervals for directly standardized rates: a method based on the gamma distribution", Statistics in
 * Medicine 16, 1997 (a weighted sum of Poisson counts, its variance {@code 1/n} there the sum of squared weights); J. Pickands, "Statistical inference
 * using extreme order statistics", Annals of Statistics 3, 1975 (excesses).
 *
 * <p>What no interval can hold are effects with a heavy tail of which only the smaller ones were seen: with N below 10 and c above 1
 * some 92 % of intervals hold the truth instead of 95 %. Where effects are equal, or vary less than that, it is 95 % and more.
 *
 * <p>Rule REPORT-17.
 */
final class FewEvents {
    private final double confidence;

    /** Limits that leave out {@code 1 - confidence}, with {@code confidence} in (0, 1). */
    FewEvents(double confidence) {
        this.confidence = confidence;
    }

    /** Lower and upper limit of a mean, {@code low <= high}. */
    record Limits(double low, double high) {}

    /** For how many independent events of equal effect those of {@code part} stand; 0 without an event, maybe infinite. */
    double equivalent(EventPart part) {
        long count = part.count();
        return count == 0 ? 0 : count / (dispersion(part) + squaredVariation(part));
    }

    /** The limits of the mean over replications of what the events of {@code part} come to. */
    Limits limits(EventPart part) {
        double mean = part.mean();
        if (part.count() == 0) {
            double three = 3 * Math.log(1 - confidence) / Math.log(1 - Interval.CONFIDENCE);
            double most = three * part.effectOfOne() / part.replications();
            return most < 0 ? new Limits(most, 0) : new Limits(0, most);
        }
        double n = equivalent(part);
        double out = (1 - confidence) / 2;
        double less = mean * GammaDistribution.of(n, 1).inverseCumulativeProbability(out) / n;
        double w = Math.max(1 / n, largest(part));
        double scale = (1 / n + w * w) / (1 + w);
        double more = mean * GammaDistribution.of((1 + w) / scale, scale).inverseSurvivalProbability(out);
        return new Limits(Math.min(less, more), Math.max(less, more));
    }

    /** Of the effects of single events, as the sums of replications show them, the largest in the sum of all. */
    private static double largest(EventPart part) {
        double sum = DoubleStream.of(part.effects()).sum();
        return IntStream.range(0, part.replications())
                .filter(i -> part.events()[i] > 0)
                .mapToDouble(i -> part.effects()[i] / part.events()[i] / sum)
                .max()
                .orElse(0);
    }

    private double dispersion(EventPart part) {
        double perTrial = part.count() / DoubleStream.of(part.trials()).sum();
        double least = part.isOncePerTrial() ? Math.max(0, 1 - perTrial) : 1;
        double squares = 0;
        int counting = 0;
        for (int i = 0; i < part.replications(); i++) {
            double expected = perTrial * part.trials()[i];
            if (expected > 0) {
                double excess = part.events()[i] - expected;
                squares += excess * excess / expected;
                counting++;
            }
        }
        if (counting < 2) {
            return least;
        }
        int freedom = counting - 1;
        double seen = squares / freedom;
        boolean bunched = ChiSquaredDistribution.of(freedom).survivalProbability(squares) < 1 - confidence;
        double unsure = bunched ? Estimators.studentQuantile(confidence, freedom) / Wilson.deviate(confidence) : 1;
        return Math.max(least, seen * unsure * unsure);
    }

    private static double squaredVariation(EventPart part) {
        if (part.isEqual()) {
            return 0;
        }
        double count = part.count();
        double each = DoubleStream.of(part.effects()).sum() / count;
        double squares = 0;
        double own = 0;
        for (int i = 0; i < part.replications(); i++) {
            double excess = part.effects()[i] - part.events()[i] * each;
            squares += excess * excess;
            own += (double) part.events()[i] * part.events()[i] / count;
        }
        long with = LongStream.of(part.events()).filter(number -> number > 0).count();
        double seen = count > own ? squares / (count - own) / (each * each) : 0;
        return ((with - 1) * seen + 1) / with;
    }
}
