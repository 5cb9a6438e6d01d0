package runthrough.study.fitting;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * Fits distributions with a shift: a threshold below which no time falls. For each threshold the other parameters are the likeliest ones,
 * and the threshold is sought for which that likelihood is highest.
 *
 * <p>As the threshold runs into the least time, the likelihood of these families grows without limit, although the distribution it
 * leads to is absurd. So, as is usual (A. C. Cohen, Estimating parameters of logarithmic-normal distributions by maximum
 * likelihood, JASA 46, 1951; R. L. Smith, Maximum likelihood estimation in a class of nonregular cases, Biometrika 72, 1985;
 * both from memory), the local maximum is taken that lies between 0 and a bound: a tenth of the distance at which an
 * exponential distribution of these times would be expected to begin below the least, {@code (mean - least) / n}. Where there is no such
 * maximum, there is no shifted distribution of that family.
 *
 * <p>For the exponential distribution the least time itself would be the likeliest threshold. Taken are the unbiased estimates, which
 * lie that distance below it (N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions 1, 2nd ed., 1994, ch. 19;
 * from memory).
 */
final class Threshold {
    private static final int GRID = 16;
    private static final double BOUND = 0.1;
    private static final double EXACTNESS = 1e-6;
    private static final int MOST_STEPS = 200;

    private final Family family;
    private final Durations times;
    /** Logarithms of the distance from threshold to least time, the least distance first. */
    private final double nearest;

    private final double farthest;

    private Threshold(Family family, Durations times) {
        this.family = family;
        this.times = times;
        this.nearest = Math.log(BOUND * (times.mean() - times.least()) / times.n());
        this.farthest = Math.log(times.least());
    }

    /** The shifted distribution of {@code family} for {@code times}; empty when there is none, or when a shift gains nothing. */
    static Optional<FittedDistribution> fit(Family family, Durations times) {
        return fit(family, times, false);
    }

    /** The same, but where there is none the better of the distributions at the bound and without a shift. */
    static Optional<FittedDistribution> fitAnyway(Family family, Durations times) {
        return fit(family, times, true).or(() -> MaximumLikelihood.fit(family, times));
    }

    private static Optional<FittedDistribution> fit(Family family, Durations times, boolean endsToo) {
        if (!family.isShiftable() || !(times.least() > 0) || !(times.greatest() > times.least()) || times.n() < 3) {
            return Optional.empty();
        }
        return family == Family.EXPONENTIAL ? exponential(times) : new Threshold(family, times).fit(endsToo);
    }

    private static Optional<FittedDistribution> exponential(Durations times) {
        double distance = (times.mean() - times.least()) / (times.n() - 1);
        double threshold = times.least() - distance;
        return threshold > 0
                ? MaximumLikelihood.fit(Family.EXPONENTIAL, times.less(threshold))
                        .map(distribution -> distribution.above(threshold))
                : Optional.empty();
    }

    private Optional<FittedDistribution> fit(boolean endsToo) {
        if (!(nearest < farthest)) {
            return Optional.empty();
        }
        double step = (farthest - nearest) / GRID;
        double[] heights = IntStream.rangeClosed(0, GRID)
                .mapToDouble(i -> height(nearest + i * step))
                .toArray();
        OptionalInt peak = IntStream.range(1, GRID)
                .filter(i -> heights[i] >= heights[i - 1] && heights[i] > heights[i + 1])
                .boxed()
                .max((a, b) -> Double.compare(heights[a], heights[b]))
                .map(OptionalInt::of)
                .orElseGet(OptionalInt::empty);
        if (peak.isEmpty()) {
            return endsToo ? distribution(heights[0] > heights[GRID] ? nearest : farthest) : Optional.empty();
        }
        double at = nearest + peak.getAsInt() * step;
        double best = new BrentOptimizer(EXACTNESS, EXACTNESS)
                .optimize(
                        new UnivariateObjectiveFunction(this::height),
                        GoalType.MAXIMIZE,
                        new SearchInterval(at - step, at + step, at),
                        new MaxEval(MOST_STEPS))
                .getPoint();
        return distribution(best);
    }

    private double height(double logDistance) {
        return distribution(logDistance).map(FittedDistribution::logLikelihood).orElse(Double.NEGATIVE_INFINITY);
    }

    private Optional<FittedDistribution> distribution(double logDistance) {
        double threshold = Math.max(0, times.least() - Math.exp(logDistance));
        return MaximumLikelihood.fit(family, times.less(threshold)).map(distribution -> distribution.above(threshold));
    }
}
