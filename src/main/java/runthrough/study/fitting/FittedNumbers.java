package runthrough.study.fitting;

import java.util.List;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.ExponentialDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import runthrough.plant.Distribution;

/**
 * The numbers that a fit finds for one distribution of a family, before a shift. Both views of the distribution are made of them: what
 * a scenario draws from, and what the fit is judged by.
 */
public sealed interface FittedNumbers {

    /** The family that they describe a distribution of. */
    Family family();

    /** What a scenario draws from. */
    Distribution distribution();

    /**
     * Density and distribution function for likelihoods and distances. Not those of {@link #distribution()}: a likelihood needs the
     * logarithm of the density, also where the density itself is too small for a double.
     */
    ContinuousDistribution functions();

    /** Those that are given beside mean and standard deviation. */
    default List<Parameter> parameters() {
        return List.of();
    }

    /** Mean and standard deviation of the logarithm of the times (s). */
    record Lognormal(double mu, double sigma) implements FittedNumbers {
        @Override
        public Family family() {
            return Family.LOGNORMAL;
        }

        @Override
        public Distribution distribution() {
            double variance = sigma * sigma;
            double mean = Math.exp(mu + variance / 2);
            return Distribution.lognormal(mean, mean * Math.sqrt(Math.expm1(variance)));
        }

        @Override
        public ContinuousDistribution functions() {
            return LogNormalDistribution.of(mu, sigma);
        }
    }

    /** Shape and mean (s). */
    record Gamma(double shape, double mean) implements FittedNumbers {
        @Override
        public Family family() {
            return Family.GAMMA;
        }

        @Override
        public Distribution distribution() {
            return Distribution.gamma(mean, mean / Math.sqrt(shape));
        }

        @Override
        public ContinuousDistribution functions() {
            return GammaDistribution.of(shape, mean / shape);
        }
    }

    /** Shape and scale (s). */
    record Weibull(double shape, double scale) implements FittedNumbers {
        @Override
        public Family family() {
            return Family.WEIBULL;
        }

        @Override
        public Distribution distribution() {
            return Distribution.weibull(shape, scale);
        }

        @Override
        public ContinuousDistribution functions() {
            return WeibullDistribution.of(shape, scale);
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(new Parameter("shape", false, true, shape), new Parameter("scale", true, true, scale));
        }
    }

    /** The mean (s). */
    record Exponential(double mean) implements FittedNumbers {
        @Override
        public Family family() {
            return Family.EXPONENTIAL;
        }

        @Override
        public Distribution distribution() {
            return Distribution.exponential(mean);
        }

        @Override
        public ContinuousDistribution functions() {
            return ExponentialDistribution.of(mean);
        }
    }

    /** Mean and standard deviation of the parent (s), of which the part above 0 is taken. */
    record Normal(double mean, double sd) implements FittedNumbers {
        /** With the mean so many standard deviations above 0 nothing is cut off that a double could tell. */
        private static final double FAR_FROM_ZERO = 8;

        boolean isFarFromZero() {
            return mean > FAR_FROM_ZERO * sd;
        }

        @Override
        public Family family() {
            return Family.NORMAL;
        }

        @Override
        public Distribution distribution() {
            return Distribution.normal(mean, sd);
        }

        @Override
        public ContinuousDistribution functions() {
            return isFarFromZero()
                    ? NormalDistribution.of(mean, sd)
                    : TruncatedNormalDistribution.of(mean, sd, 0, Double.POSITIVE_INFINITY);
        }
    }

    /** Least, most likely and greatest time (s). */
    record Triangular(double least, double mode, double greatest) implements FittedNumbers {
        @Override
        public Family family() {
            return Family.TRIANGULAR;
        }

        @Override
        public Distribution distribution() {
            return Distribution.triangular(least, mode, greatest);
        }

        @Override
        public ContinuousDistribution functions() {
            return TriangularDistribution.of(least, mode, greatest);
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(
                    new Parameter("least", true, false, least),
                    new Parameter("most likely", true, false, mode),
                    new Parameter("greatest", true, false, greatest));
        }
    }
}
