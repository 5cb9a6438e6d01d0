package runthrough.study.fitting;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import runthrough.plant.Distribution;

/**
 * A distribution fitted to times.
 *
 * @param numbers that were fitted, before the shift
 * @param shift that is added to each draw (s), {@code >= 0}
 * @param isShifted whether the shift was fitted, which costs a parameter
 * @param logLikelihood of the times it was fitted to
 */
public record FittedDistribution(FittedNumbers numbers, double shift, boolean isShifted, double logLikelihood) {

    /** The distribution that {@code numbers} describe, with its likelihood. */
    static FittedDistribution of(FittedNumbers numbers, Durations times) {
        ContinuousDistribution functions = numbers.functions();
        double logLikelihood =
                Arrays.stream(times.exact()).map(functions::logDensity).sum()
                        + Arrays.stream(times.longerThan())
                                .map(time -> Math.log(functions.survivalProbability(time)))
                                .sum();
        return new FittedDistribution(numbers, 0, false, logLikelihood);
    }

    /** This, fitted to times less {@code threshold}, as a distribution of the times themselves. */
    FittedDistribution above(double threshold) {
        return new FittedDistribution(numbers, threshold, true, logLikelihood);
    }

    /** The family that it belongs to. */
    public Family family() {
        return numbers.family();
    }

    /** How many numbers were fitted. */
    public int parameters() {
        return family().parameters() + (isShifted ? 1 : 0);
    }

    /** As a scenario takes it. */
    public Distribution distribution() {
        return numbers.distribution().shifted(shift);
    }

    /** Its name, such as {@code shifted gamma}. */
    public String label() {
        return (isShifted ? "shifted " : "") + family().label();
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
