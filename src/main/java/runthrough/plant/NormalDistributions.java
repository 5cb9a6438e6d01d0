package runthrough.plant;

import umontreal.ssj.probdist.NormalDist;

/**
 * The normal distribution, kept above 0, and the lognormal one; made by the factory methods of {@link Distribution}. Formulas are the
 * textbook ones.
 */
public final class NormalDistributions {

    private NormalDistributions() {}

    /**
     * Normal distribution of the parent's {@code parentMean} and {@code parentSd}, conditioned on being more than 0.
     *
     * <p>Rule DIST-4.
     */
    public record Normal(double parentMean, double parentSd) implements FromZero {
        public Normal {
            Ranges.of("")
                    .finitePositive("mean", parentMean, Ranges.Of.NUMBER)
                    .finitePositive("sd", parentSd, Ranges.Of.NUMBER)
                    .refuse();
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
    }

    /** Lognormal distribution of which {@code mean} and {@code sd} are those of the quantity itself. Rule DIST-5. */
    public record Lognormal(double mean, double sd, double mu, double sigma) implements FromZero {
        public Lognormal {
            Ranges.of("")
                    .finitePositive("mean", mean, Ranges.Of.NUMBER)
                    .finitePositive("sd", sd, Ranges.Of.NUMBER)
                    .refuse();
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
    }
}
