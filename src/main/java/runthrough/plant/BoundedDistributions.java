package runthrough.plant;

/** Distributions between two ends; made by the factory methods of {@link Distribution}. Formulas are the textbook ones. */
public final class BoundedDistributions {

    private BoundedDistributions() {}

    static UnsupportedOperationException noDensity(String what) {
        return new UnsupportedOperationException(what + " has no density; its distribution function has steps");
    }

    /** Always {@code value}. Rule DIST-1. */
    public record Constant(double value) implements Distribution {
        public Constant {
            Ranges.of("").notNegative("value", value, Ranges.Of.NUMBER).refuse();
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
            Ranges.of("")
                    .notNegative("min", min, Ranges.Of.NUMBER)
                    .from(min, "min", "max", max, Ranges.Of.NUMBER)
                    .refuse();
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
            Ranges.of("")
                    .notNegative("min", min, Ranges.Of.NUMBER)
                    .from(min, "min", "mode", mode, Ranges.Of.NUMBER)
                    .from(mode, "mode", "max", max, Ranges.Of.NUMBER)
                    .refuse();
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
}
