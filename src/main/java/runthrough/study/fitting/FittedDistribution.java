package runthrough.study.fitting;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import runthrough.plant.Distribution;

/**
 * A distribution fitted to times.
 *
 * @param family it belongs to
 * @param shift that is added to each draw (s), {@code >= 0}
 * @param isShifted whether the shift was fitted, which costs a parameter
 * @param base density and distribution function, before the shift
 * @param unshifted the same as a distribution of scenarios, before the shift
 * @param logLikelihood of the times it was fitted to
 */
public record FittedDistribution(
        Family family,
        double shift,
        boolean isShifted,
        ContinuousDistribution base,
        Distribution unshifted,
        double logLikelihood) {

    /** The distribution {@code base} with its likelihood. */
    static FittedDistribution of(
            Family family, ContinuousDistribution base, Distribution distribution, Durations times) {
        double logLikelihood =
                Arrays.stream(times.exact()).map(base::logDensity).sum()
                        + Arrays.stream(times.longerThan())
                                .map(time -> Math.log(base.survivalProbability(time)))
                                .sum();
        return new FittedDistribution(family, 0, false, base, distribution, logLikelihood);
    }

    /** This, fitted to times less {@code threshold}, as a distribution of the times themselves. */
    FittedDistribution above(double threshold) {
        return new FittedDistribution(family, threshold, true, base, unshifted, logLikelihood);
    }

    /** How many numbers were fitted. */
    public int parameters() {
        return family.parameters() + (isShifted ? 1 : 0);
    }

    /** As a scenario takes it. */
    public Distribution distribution() {
        return unshifted.shifted(shift);
    }

    /** Its name, such as {@code shifted gamma}. */
    public String label() {
        return (isShifted ? "shifted " : "") + family.label();
    }

    /** The share of times up to {@code time} (s). */
    public double cumulative(double time) {
        return base.cumulativeProbability(time - shift);
    }

    /** The share of times beyond {@code time} (s). */
    public double survival(double time) {
        return base.survivalProbability(time - shift);
    }

    /** Density at {@code time} (1/s). */
    public double density(double time) {
        return base.density(time - shift);
    }

    /**
     * Akaike's criterion, 2 k - 2 ln L with k parameters; the less, the better. H. Akaike, A new look at the statistical model
     * identification, IEEE Transactions on Automatic Control 19, 1974 (from memory).
     */
    public double aic() {
        return 2 * parameters() - 2 * logLikelihood;
    }

    /**
     * Akaike's criterion corrected for {@code n} times, + 2 k (k + 1) / (n - k - 1); infinite for too few. C. M. Hurvich and
     * C.-L. Tsai, Regression and time series model selection in small samples, Biometrika 76, 1989 (from memory).
     */
    public double aicc(int n) {
        int k = parameters();
        return n > k + 1 ? aic() + 2.0 * k * (k + 1) / (n - k - 1) : Double.POSITIVE_INFINITY;
    }
}
