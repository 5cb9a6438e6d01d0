package runthrough.plant;

import java.util.Arrays;
import java.util.List;
import umontreal.ssj.probdist.GammaDist;
import umontreal.ssj.probdist.NormalDist;
import umontreal.ssj.util.Num;

/**
 * The distributions behind {@link Distribution}; made by its factory methods. Formulas are the textbook moments and inverses. All of
 * them stand in one file, although it is a long one, because each is a few lines that read best beside the others.
 */
public final class Distributions {

    private Distributions() {}

    private static UnsupportedOperationException noDensity(String what) {
        return new UnsupportedOperationException(what + " has no density; its distribution function has steps");
    }

    /** {@code exponent * ln(value)}, and 0 for an exponent of 0, also at a value of 0. */
    private static double power(double exponent, double value) {
        return exponent == 0 ? 0 : exponent * Math.log(value);
    }

    /** Always {@code value}. Rule DIST-1. */
    public record Constant(double value) implements Distribution {
        public Constant {
            Ranges.notNegative("value", value);
        }

        @Override
        public double quantile(double p) {
            return value;
        }

        @Override
        public double cumulative(double at) {
            return at >= value ? 1 : 0;
        }

        @Override
        public double density(double at) {
            throw noDensity("a constant");
        }

        @Override
        public double mean() {
            return value;
        }

        @Override
        public double sd() {
            return 0;
        }

        @Override
        public double lowest() {
            return value;
        }

        @Override
        public double highest() {
            return value;
        }
    }

    /** Equally likely between {@code min} and {@code max}. Rule DIST-2. */
    public record Uniform(double min, double max) implements Distribution {
        public Uniform {
            Ranges.notNegative("min", min);
            if (!(max >= min && max < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("max = " + max + "; must be min (" + min + ") or more");
            }
        }

        @Override
        public double quantile(double p) {
            return min + p * (max - min);
        }

        @Override
        public double cumulative(double value) {
            return value >= max ? 1 : Math.max(0, (value - min) / (max - min));
        }

        @Override
        public double survival(double value) {
            return value >= max ? 0 : Math.min(1, (max - value) / (max - min));
        }

        @Override
        public double density(double value) {
            if (isConstant()) {
                throw noDensity("a constant");
            }
            return value < min || value > max ? 0 : 1 / (max - min);
        }

        @Override
        public double mean() {
            return (min + max) / 2;
        }

        @Override
        public double sd() {
            return (max - min) / Math.sqrt(12);
        }

        @Override
        public double lowest() {
            return min;
        }

        @Override
        public double highest() {
            return max;
        }
    }

    /** Rises from {@code min} to {@code mode} and falls to {@code max}. Rule DIST-3. */
    public record Triangular(double min, double mode, double max) implements Distribution {
        public Triangular {
            Ranges.notNegative("min", min);
            if (!(mode >= min && max >= mode && max < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("triangular " + min + ", " + mode + ", " + max
                        + "; must be in the order least, most likely, greatest");
            }
        }

        @Override
        public double quantile(double p) {
            double width = max - min;
            if (width == 0) {
                return min;
            }
            return p * width < mode - min
                    ? min + Math.sqrt(p * width * (mode - min))
                    : max - Math.sqrt((1 - p) * width * (max - mode));
        }

        @Override
        public double cumulative(double value) {
            if (value >= max) {
                return 1;
            }
            return value < mode ? rising(value) : 1 - falling(value);
        }

        @Override
        public double survival(double value) {
            if (value >= max) {
                return 0;
            }
            return value < mode ? 1 - rising(value) : falling(value);
        }

        /** The share below {@code value}, which is less than the mode. */
        private double rising(double value) {
            return value <= min ? 0 : (value - min) / (max - min) * ((value - min) / (mode - min));
        }

        /** The share beyond {@code value}, from the mode to the greatest. */
        private double falling(double value) {
            return mode == max ? 0 : (max - value) / (max - min) * ((max - value) / (max - mode));
        }

        @Override
        public double density(double value) {
            if (isConstant()) {
                throw noDensity("a constant");
            }
            if (value < min || value > max) {
                return 0;
            }
            double height = 2 / (max - min);
            if (value == mode) {
                return height;
            }
            return height * (value < mode ? (value - min) / (mode - min) : (max - value) / (max - mode));
        }

        @Override
        public double mean() {
            return (min + mode + max) / 3;
        }

        @Override
        public double sd() {
            double low = mode - min;
            double high = max - mode;
            return Math.sqrt((low * low + low * high + high * high) / 18);
        }

        @Override
        public double lowest() {
            return min;
        }

        @Override
        public double highest() {
            return max;
        }
    }

    /**
     * Normal distribution of the parent's {@code parentMean} and {@code parentSd}, conditioned on being more than 0.
     *
     * <p>Rule DIST-4.
     */
    public record Normal(double parentMean, double parentSd) implements Distribution {
        public Normal {
            Ranges.finitePositive("mean", parentMean);
            Ranges.finitePositive("sd", parentSd);
        }

        @Override
        public double quantile(double p) {
            // The upper tail keeps its digits: Q = P(parent > value) = (1 - p) P(parent > 0).
            double upper = (1 - p) * NormalDist.cdf01(parentMean / parentSd);
            return Math.max(parentMean - parentSd * NormalDist.inverseF01(upper), 0);
        }

        @Override
        public double cumulative(double value) {
            return value <= 0 ? 0 : Math.max(0, (standard(value) - standard(0)) / aboveZero());
        }

        @Override
        public double survival(double value) {
            return value <= 0 ? 1 : NormalDist.barF01((value - parentMean) / parentSd) / aboveZero();
        }

        @Override
        public double density(double value) {
            return value < 0 ? 0 : NormalDist.density01((value - parentMean) / parentSd) / (parentSd * aboveZero());
        }

        private double standard(double value) {
            return NormalDist.cdf01((value - parentMean) / parentSd);
        }

        /** The share of the parent that is above 0. */
        private double aboveZero() {
            return NormalDist.barF01(-parentMean / parentSd);
        }

        @Override
        public double mean() {
            return parentMean + parentSd * hazardAtZero();
        }

        @Override
        public double sd() {
            double cut = -parentMean / parentSd;
            double hazard = hazardAtZero();
            return parentSd * Math.sqrt(1 + cut * hazard - hazard * hazard);
        }

        /** Density over upper tail of the standard normal distribution at the cut. */
        private double hazardAtZero() {
            double cut = -parentMean / parentSd;
            return NormalDist.density01(cut) / NormalDist.barF01(cut);
        }

        @Override
        public double lowest() {
            return 0;
        }

        @Override
        public double highest() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Lognormal distribution of which {@code mean} and {@code sd} are those of the quantity itself. Rule DIST-5. */
    public record Lognormal(double mean, double sd, double mu, double sigma) implements Distribution {
        public Lognormal {
            Ranges.finitePositive("mean", mean);
            Ranges.finitePositive("sd", sd);
        }

        Lognormal(double mean, double sd) {
            this(mean, sd, Math.log(mean) - logVariance(mean, sd) / 2, Math.sqrt(logVariance(mean, sd)));
        }

        private static double logVariance(double mean, double sd) {
            double cv = sd / mean;
            return Math.log1p(cv * cv);
        }

        @Override
        public double quantile(double p) {
            return Math.exp(mu + sigma * NormalDist.inverseF01(p));
        }

        @Override
        public double cumulative(double value) {
            return value <= 0 ? 0 : NormalDist.cdf01((Math.log(value) - mu) / sigma);
        }

        @Override
        public double survival(double value) {
            return value <= 0 ? 1 : NormalDist.barF01((Math.log(value) - mu) / sigma);
        }

        @Override
        public double density(double value) {
            return value <= 0 ? 0 : NormalDist.density01((Math.log(value) - mu) / sigma) / (sigma * value);
        }

        @Override
        public double lowest() {
            return 0;
        }

        @Override
        public double highest() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Gamma distribution by its mean and standard deviation. Its inverse is iterative: dear, but it keeps the random numbers aligned.
     *
     * <p>Rule DIST-6.
     */
    public record Gamma(double mean, double sd) implements Distribution {
        private static final int DIGITS = 15;

        public Gamma {
            Ranges.finitePositive("mean", mean);
            Ranges.finitePositive("sd", sd);
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

        @Override
        public double lowest() {
            return 0;
        }

        @Override
        public double highest() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Weibull distribution. Rule DIST-7. */
    public record Weibull(double shape, double scale) implements Distribution {
        public Weibull {
            Ranges.finitePositive("shape", shape);
            Ranges.finitePositive("scale", scale);
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

        @Override
        public double lowest() {
            return 0;
        }

        @Override
        public double highest() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Exponential distribution. Rule DIST-8. */
    public record Exponential(double mean) implements Distribution {
        public Exponential {
            Ranges.finitePositive("mean", mean);
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

        @Override
        public double lowest() {
            return 0;
        }

        @Override
        public double highest() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Measured values, all equally likely. Rule DIST-9. */
    public record Observed(List<Double> values, double mean, double sd) implements Distribution {
        public Observed {
            values = List.copyOf(values);
        }

        Observed(List<Double> measured) {
            this(sorted(measured), meanOf(measured), spreadOf(measured));
        }

        private static List<Double> sorted(List<Double> values) {
            if (values.isEmpty()) {
                throw new IllegalArgumentException("no observed values; give at least one");
            }
            values.forEach(value -> Ranges.notNegative("observed value", value));
            return values.stream().sorted().toList();
        }

        private static double meanOf(List<Double> values) {
            return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        }

        /** Spread of the resampling distribution itself: divisor n, since the values are the whole population drawn from. */
        private static double spreadOf(List<Double> values) {
            double mean = meanOf(values);
            double[] squares = values.stream()
                    .mapToDouble(value -> (value - mean) * (value - mean))
                    .toArray();
            return Math.sqrt(Arrays.stream(squares).sum() / squares.length);
        }

        @Override
        public double quantile(double p) {
            return values.get((int) (p * values.size()));
        }

        @Override
        public double cumulative(double value) {
            return (double) values.stream().filter(one -> one <= value).count() / values.size();
        }

        @Override
        public double density(double value) {
            throw noDensity("a list of observed values");
        }

        @Override
        public double lowest() {
            return values.get(0);
        }

        @Override
        public double highest() {
            return values.get(values.size() - 1);
        }
    }

    /** {@code parent} with {@code shift} added, which may be negative. Rule DIST-10. */
    public record Shifted(Distribution parent, double shift) implements Distribution {
        public Shifted {
            if (!Double.isFinite(shift)) {
                throw new IllegalArgumentException("shift = " + shift + "; must be finite");
            }
        }

        @Override
        public double quantile(double p) {
            return parent.quantile(p) + shift;
        }

        @Override
        public double cumulative(double value) {
            return parent.cumulative(value - shift);
        }

        @Override
        public double survival(double value) {
            return parent.survival(value - shift);
        }

        @Override
        public double density(double value) {
            return parent.density(value - shift);
        }

        @Override
        public double mean() {
            return parent.mean() + shift;
        }

        @Override
        public double sd() {
            return parent.sd();
        }

        @Override
        public double lowest() {
            return parent.lowest() + shift;
        }

        @Override
        public double highest() {
            return parent.highest() + shift;
        }
    }

    /** {@code parent} with each draw multiplied by {@code factor}. */
    public record Scaled(Distribution parent, double factor) implements Distribution {
        public Scaled {
            Ranges.finitePositive("factor", factor);
        }

        @Override
        public double quantile(double p) {
            return parent.quantile(p) * factor;
        }

        @Override
        public double cumulative(double value) {
            return parent.cumulative(value / factor);
        }

        @Override
        public double survival(double value) {
            return parent.survival(value / factor);
        }

        @Override
        public double density(double value) {
            return parent.density(value / factor) / factor;
        }

        @Override
        public double mean() {
            return parent.mean() * factor;
        }

        @Override
        public double sd() {
            return parent.sd() * factor;
        }

        @Override
        public double lowest() {
            return parent.lowest() * factor;
        }

        @Override
        public double highest() {
            return parent.highest() * factor;
        }
    }
}
