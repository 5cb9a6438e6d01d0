package runthrough.plant;

/** Distributions made of another one; by {@link Distribution#shifted} and {@link Distribution#scaled}. */
public final class DerivedDistributions {

    private DerivedDistributions() {}

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
            Ranges.of("").finitePositive("factor", factor, Ranges.Of.NUMBER).refuse();
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
