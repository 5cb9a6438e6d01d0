package runthrough.plant;

import umontreal.ssj.probdist.GammaDist;
import umontreal.ssj.util.Num;

/**
 * Distributions of the time until something ends; made by the factory methods of {@link Distribution}. Formulas are the textbook
 * ones.
 */
public final class LifetimeDistributions {

    private LifetimeDistributions() {}

    /** {@code exponent * ln(value)}, and 0 for an exponent of 0, also at a value of 0. */
    private static double power(double exponent, double value) {
        return exponent == 0 ? 0 : exponent * Math.log(value);
    }

    /**
     * Gamma distribution by its mean and standard deviation. Its inverse is iterative: dear, but it keeps the random numbers aligned.
     *
     * <p>Rule DIST-6.
     */
    public record Gamma(double mean, double sd) implements FromZero {
        private static final int DIGITS = 15;

        public Gamma {
            Ranges.of("")
                    .finitePositive("mean", mean, Ranges.Of.NUMBER)
                    .finitePositive("sd", sd, Ranges.Of.NUMBER)
                    .refuse();
        }

        @Override
        public double quantile(double p) {
            double shape = mean / sd * (mean / sd);
            return GammaDist.inverseF(shape, shape / mean, DIGITS, p);
        }

        @Override
        public double cumulative(double value) {
            return value <= 0 ? 0 : GammaDist.cdf(shape(), shape() / mean, DIGITS, value);
        }

        @Override
        public double survival(double value) {
            return value <= 0 ? 1 : GammaDist.barF(shape(), shape() / mean, DIGITS, value);
        }

        @Override
        public double density(double value) {
            if (value < 0) {
                return 0;
            }
            double rate = shape() / mean;
            return rate * Math.exp(power(shape() - 1, rate * value) - rate * value - Num.lnGamma(shape()));
        }

        private double shape() {
            return mean / sd * (mean / sd);
        }
    }

    /** Weibull distribution. Rule DIST-7. */
    public record Weibull(double shape, double scale) implements FromZero {
        public Weibull {
            Ranges.of("")
                    .finitePositive("shape", shape, Ranges.Of.NUMBER)
                    .finitePositive("scale", scale, Ranges.Of.NUMBER)
                    .refuse();
        }

        @Override
        public double quantile(double p) {
            return scale * Math.pow(-Math.log1p(-p), 1 / shape);
        }

        @Override
        public double cumulative(double value) {
            return value <= 0 ? 0 : -Math.expm1(-Math.pow(value / scale, shape));
        }

        @Override
        public double survival(double value) {
            return value <= 0 ? 1 : Math.exp(-Math.pow(value / scale, shape));
        }

        @Override
        public double density(double value) {
            if (value < 0) {
                return 0;
            }
            double ratio = value / scale;
            return shape / scale * Math.exp(power(shape - 1, ratio) - Math.pow(ratio, shape));
        }

        @Override
        public double mean() {
            return scale * Math.exp(Num.lnGamma(1 + 1 / shape));
        }

        @Override
        public double sd() {
            double first = Math.exp(Num.lnGamma(1 + 1 / shape));
            return scale * Math.sqrt(Math.exp(Num.lnGamma(1 + 2 / shape)) - first * first);
        }
    }

    /** Exponential distribution. Rule DIST-8. */
    public record Exponential(double mean) implements FromZero {
        public Exponential {
            Ranges.of("").finitePositive("mean", mean, Ranges.Of.NUMBER).refuse();
        }

        @Override
        public double quantile(double p) {
            return -mean * Math.log1p(-p);
        }

        @Override
        public double cumulative(double value) {
            return value <= 0 ? 0 : -Math.expm1(-value / mean);
        }

        @Override
        public double survival(double value) {
            return value <= 0 ? 1 : Math.exp(-value / mean);
        }

        @Override
        public double density(double value) {
            return value < 0 ? 0 : Math.exp(-value / mean) / mean;
        }

        @Override
        public double sd() {
            return mean;
        }
    }
}
