package runthrough.plant;

import java.util.Arrays;
import java.util.List;

/** Measured values, all equally likely. Rule DIST-9. */
public record ObservedDistribution(List<Double> values, double mean, double sd) implements Distribution {
    public ObservedDistribution {
        values = List.copyOf(values);
    }

    ObservedDistribution(List<Double> measured) {
        this(sorted(measured), meanOf(measured), spreadOf(measured));
    }

    private static List<Double> sorted(List<Double> values) {
        if (values.isEmpty()) {
            throw new IllegalArgumentException("no observed values; give at least one");
        }
        Ranges ranges = Ranges.of("");
        values.forEach(value -> ranges.notNegative("observed value", value, Ranges.Of.NUMBER));
        ranges.refuse();
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
        throw BoundedDistributions.noDensity("a list of observed values");
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
