package runthrough.plant;

import java.util.List;

/**
 * The distribution of a random quantity (a time in seconds, a length in metres, a mass in kilograms). A value is drawn by
 * inversion, one uniform number a draw, so that variants compared under the same seed see the same random numbers.
 *
 * <p>Rules RANDOM-1, DIST-12.
 */
public sealed interface Distribution
        permits BoundedDistributions.Constant,
                BoundedDistributions.Uniform,
                BoundedDistributions.Triangular,
                FromZero,
                ObservedDistribution,
                DerivedDistributions.Shifted,
                DerivedDistributions.Scaled {

    /** The smallest share that any draw is made at, and as far below 1 the largest: random numbers have 52 bits. */
    double LEAST_DRAW = 0x1p-53;

    /** The value below which the share {@code p} of all draws falls; {@code p} in (0, 1). Not decreasing in {@code p}. */
    double quantile(double p);

    /**
     * The distribution function: the share of all draws that are {@code value} or less, in [0, 1]. 0 below {@link #lowest()}, 1
     * from {@link #highest()} on.
     */
    double cumulative(double value);

    /** The share of all draws that are more than {@code value}, in [0, 1]; keeps its digits where it is small. */
    default double survival(double value) {
        return 1 - cumulative(value);
    }

    /**
     * The density at {@code value}, in 1 over the quantity's unit, {@code >= 0}; 0 outside the ends, and at an end the limit from
     * within, which may be infinite.
     *
     * @throws UnsupportedOperationException when single values have a share of their own: constant and observed values
     */
    double density(double value);

    /** The mean, in the quantity's unit. */
    double mean();

    /** The standard deviation, in the quantity's unit, {@code >= 0}. */
    double sd();

    /** The greatest lower bound of what may be drawn. */
    double lowest();

    /** The least upper bound of what may be drawn; may be positive infinity. */
    double highest();

    /** Whether every draw is the same value, so that no random number need be spent on it. */
    default boolean isConstant() {
        return lowest() == highest();
    }

    /** A quantity that is always {@code value}, {@code >= 0}. */
    static Distribution constant(double value) {
        return new BoundedDistributions.Constant(value);
    }

    /** Uniform from {@code min} to {@code max}, {@code 0 <= min <= max}. */
    static Distribution uniform(double min, double max) {
        return new BoundedDistributions.Uniform(min, max);
    }

    /** Triangular, {@code 0 <= min <= mode <= max}. */
    static Distribution triangular(double min, double mode, double max) {
        return new BoundedDistributions.Triangular(min, mode, max);
    }

    /**
     * Normal with the parent's mean and standard deviation, conditioned on being more than 0; {@code mean > 0}, {@code sd
     * >= 0}. What {@link #mean()} reports is that of the conditioned distribution.
     *
     * <p>Rule DIST-11.
     */
    static Distribution normal(double mean, double sd) {
        return sd == 0 ? constant(positive(mean)) : new NormalDistributions.Normal(mean, sd);
    }

    /** Lognormal with the mean and standard deviation of the quantity itself, not of its logarithm; {@code sd >= 0}. */
    static Distribution lognormal(double mean, double sd) {
        return sd == 0 ? constant(positive(mean)) : new NormalDistributions.Lognormal(mean, sd);
    }

    /** Gamma with mean and standard deviation; {@code mean > 0}, {@code sd >= 0}. */
    static Distribution gamma(double mean, double sd) {
        return sd == 0 ? constant(positive(mean)) : new LifetimeDistributions.Gamma(mean, sd);
    }

    private static double positive(double mean) {
        Ranges.of("").finitePositive("mean", mean, Ranges.Of.NUMBER).refuse();
        return mean;
    }

    /** Weibull with shape (no unit) and scale (the quantity's unit), both {@code > 0}. */
    static Distribution weibull(double shape, double scale) {
        return new LifetimeDistributions.Weibull(shape, scale);
    }

    /** Exponential with its mean, {@code > 0}. */
    static Distribution exponential(double mean) {
        return new LifetimeDistributions.Exponential(mean);
    }

    /** Measured values, all equally likely; at least one, all {@code >= 0}. */
    static Distribution observed(List<Double> values) {
        return new ObservedDistribution(values);
    }

    /**
     * This distribution with {@code shift} added to each draw; a draw that ends below 0 is an error when it is drawn.
     */
    default Distribution shifted(double shift) {
        return shift == 0 ? this : new DerivedDistributions.Shifted(this, shift);
    }

    /** This distribution with each draw multiplied by {@code factor}, {@code > 0}. */
    default Distribution scaled(double factor) {
        return factor == 1 ? this : new DerivedDistributions.Scaled(this, factor);
    }
}
