package runthrough.study.statistics;

import java.util.Arrays;
import org.apache.commons.statistics.descriptive.Quantile;
import org.jspecify.annotations.Nullable;

/** Takes up one quantity, coil change by coil change and replication by replication. Not safe for use by several threads. */
public final class Pool {
    /** Hyndman and Fan's definition 7. */
    private static final Quantile QUANTILE =
            Quantile.withDefaults().withCopy(true).with(Quantile.EstimationMethod.HF7);

    private double[] values = new double[1024];
    private int count;
    private int begun;
    private double[] means = new double[64];
    private int replications;
    private @Nullable Sample sample;

    /** Takes up a value, unless it is NaN, which stands for "there was none". */
    public void add(double value) {
        if (!Double.isNaN(value)) {
            if (count == values.length) {
                values = Arrays.copyOf(values, 2 * count);
            }
            values[count++] = value;
        }
    }

    /** Ends a replication; one that gave no value is left out of the mean. */
    public void endReplication() {
        if (count > begun) {
            if (replications == means.length) {
                means = Arrays.copyOf(means, 2 * replications);
            }
            means[replications++] =
                    Moments.of(Arrays.copyOfRange(values, begun, count)).mean();
            begun = count;
            sample = null;
        }
    }

    /** How many values so far. */
    public int count() {
        return count;
    }

    /** All values of the replications ended so far. */
    public Sample sample() {
        if (sample == null) {
            sample = Sample.of(Arrays.copyOf(values, begun));
        }
        return sample;
    }

    /** One percentile, as {@link Sample#percentile} defines it, without putting all values in order. */
    public double percentile(double p) {
        return QUANTILE.evaluateRange(values, 0, begun, p);
    }

    /** The mean over the replications ended so far, of which at least one must have given a value. */
    public Estimate mean() {
        return Estimators.mean(Arrays.copyOf(means, replications));
    }
}
