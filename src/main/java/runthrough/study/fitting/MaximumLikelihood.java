package runthrough.study.fitting;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import umontreal.ssj.util.Num;

/**
 * Fits distributions without a shift by maximum likelihood. Where the likelihood can be maximised over all parameters but one by a formula
 * (Weibull, gamma: N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions 1, 2nd ed., 1994, ch. 21 and
 * 17, from memory) the root of the last equation is sought; else the likelihood is climbed. Lognormal, Weibull and exponential
 * take times whose end was not seen.
 */
public final class MaximumLikelihood {
    private static final double EXACTNESS = 1e-13;
    private static final int MOST_STEPS = 200;
    /** The likeliest shape is hardly ever farther from the first guess than by this factor. */
    private static final double NEAR = 1.6;

    private static final double LEAST_SHAPE = 0.02;
    /** What a scenario takes as the shape of a Weibull distribution. */
    private static final double GREATEST_SHAPE = 1000;

    private MaximumLikelihood() {}

    /**
     * The distribution of {@code family} under which {@code times} are likeliest; empty when there is none: a time of 0 where the density
     * has no value, fewer than two different times.
     */
    public static Optional<FittedDistribution> fit(Family family, Durations times) {
        boolean isExponential = family == Family.EXPONENTIAL;
        boolean isPositive = times.least() > 0 || isExponential || family == Family.TRIANGULAR;
        boolean varies = times.greatest() > times.least() || times.isCensored();
        if (!isPositive || !(varies || isExponential) || !(times.greatest() > 0)) {
            return Optional.empty();
        }
        return switch (family) {
            case LOGNORMAL -> Optional.of(lognormal(times));
            case GAMMA -> gamma(uncensored(times));
            case WEIBULL -> weibull(times);
            case EXPONENTIAL -> Optional.of(exponential(times));
            case NORMAL -> Optional.of(PositiveNormal.fit(uncensored(times)));
            case TRIANGULAR -> Optional.of(TriangularFit.fit(uncensored(times)));
        };
    }

    private static Durations uncensored(Durations times) {
        if (times.isCensored()) {
            throw new IllegalArgumentException("this family is fitted only to times that were seen to their end");
        }
        return times;
    }

    private static FittedDistribution exponential(Durations times) {
        double mean = (Arrays.stream(times.exact()).sum()
                        + Arrays.stream(times.longerThan()).sum())
                / times.n();
        return FittedDistribution.of(new FittedNumbers.Exponential(mean), times);
    }

    private static FittedDistribution lognormal(Durations times) {
        double mu = times.meanLogarithm();
        double variance = Arrays.stream(times.exact())
                .map(time -> Math.log(time) - mu)
                .map(deviation -> deviation * deviation)
                .average()
                .orElseThrow();
        FittedNumbers.Lognormal seen = new FittedNumbers.Lognormal(mu, Math.sqrt(variance));
        return FittedDistribution.of(times.isCensored() ? censored(seen, times) : seen, times);
    }

    /** The likeliest for times of which some were not seen to their end, begun from {@code seen}, the likeliest for the others. */
    private static FittedNumbers.Lognormal censored(FittedNumbers.Lognormal seen, Durations times) {
        double[] best = LikelihoodMaximum.highest(
                at -> {
                    NormalDistribution distribution = NormalDistribution.of(at[0], Math.exp(at[1]));
                    double ended = Arrays.stream(times.exact())
                            .map(time -> distribution.logDensity(Math.log(time)))
                            .sum();
                    double others = Arrays.stream(times.longerThan())
                            .map(time -> Math.log(distribution.survivalProbability(Math.log(time))))
                            .sum();
                    return ended + others;
                },
                new double[] {seen.mu(), Math.log(Math.max(seen.sigma(), LEAST_SHAPE))},
                new double[] {0.5, 0.5});
        return new FittedNumbers.Lognormal(best[0], Math.exp(best[1]));
    }

    private static Optional<FittedDistribution> weibull(Durations times) {
        // Times over the greatest, so that no power overflows; the shape does not depend on it.
        double unit = Math.max(
                times.greatest(), Arrays.stream(times.longerThan()).max().orElse(0));
        double[] logarithms =
                Arrays.stream(times.exact()).map(time -> Math.log(time / unit)).toArray();
        double[] others = Arrays.stream(times.longerThan())
                .map(time -> Math.log(time / unit))
                .toArray();
        double mean = Arrays.stream(logarithms).average().orElseThrow();
        UnivariateFunction slope = shape -> {
            double[] sums = new double[2];
            add(sums, logarithms, shape);
            add(sums, others, shape);
            return sums[1] / sums[0] - 1 / shape - mean;
        };
        double guess = startingShape(logarithms, mean);
        double low = slope.value(guess / NEAR) < 0 ? guess / NEAR : LEAST_SHAPE;
        double high = slope.value(guess * NEAR) > 0 ? guess * NEAR : GREATEST_SHAPE;
        if (slope.value(low) > 0 || slope.value(high) < 0) {
            return Optional.empty();
        }
        double shape = solver().solve(MOST_STEPS, slope, low, high, guess);
        double[] sums = new double[2];
        add(sums, logarithms, shape);
        add(sums, others, shape);
        double scale = unit * Math.pow(sums[0] / times.n(), 1 / shape);
        return Optional.of(FittedDistribution.of(new FittedNumbers.Weibull(shape, scale), times));
    }

    /** Adds the sums of x^shape and of x^shape ln x. */
    private static void add(double[] sums, double[] logarithms, double shape) {
        for (double logarithm : logarithms) {
            double power = Math.exp(shape * logarithm);
            sums[0] += power;
            sums[1] += power * logarithm;
        }
    }

    /** From the standard deviation of the logarithms, which is pi / (sqrt(6) shape). */
    private static double startingShape(double[] logarithms, double mean) {
        double variance = Arrays.stream(logarithms)
                .map(logarithm -> (logarithm - mean) * (logarithm - mean))
                .average()
                .orElseThrow();
        double shape = Math.PI / Math.sqrt(6 * variance);
        return Math.min(Math.max(shape, 2 * LEAST_SHAPE), GREATEST_SHAPE / 2);
    }

    private static Optional<FittedDistribution> gamma(Durations times) {
        double mean = times.mean();
        double excess = Math.log(mean) - times.meanLogarithm();
        double guess = (3 - excess + Math.sqrt((excess - 3) * (excess - 3) + 24 * excess)) / (12 * excess);
        if (!(guess > 0 && guess < 1 / EXACTNESS)) {
            return Optional.empty();
        }
        double shape =
                solver().solve(MOST_STEPS, at -> Math.log(at) - Num.digamma(at) - excess, guess / 2, 2 * guess, guess);
        return Optional.of(FittedDistribution.of(new FittedNumbers.Gamma(shape, mean), times));
    }

    private static BrentSolver solver() {
        return new BrentSolver(EXACTNESS, EXACTNESS, EXACTNESS);
    }
}
