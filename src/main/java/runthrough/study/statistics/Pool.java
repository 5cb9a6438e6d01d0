package runthrough.study.statistics;

import java.util.Arrays;
import org.apache.commons.numbers.arrays.Selection;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.StandardDeviation;
import org.jspecify.annotations.Nullable;

/** Takes up one quantity, coil change by coil change and replication by replication. Not safe for use by several threads. */
public final class Pool {
    private static final int USUAL_ROOM = 1024;

    private double[] values;
    private int count;
    private int begun;
    private double[] means = new double[1];
    private int replications;
    private @Nullable Sample sample;

    /** An empty pool. */
    public Pool() {
        this(USUAL_ROOM);
    }

    /** An empty pool with room for so many values to begin with; it grows as it must. */
    public Pool(int room) {
        this.values = new double[room];
    }

    /** Takes up a value, unless it is NaN, which stands for "there was none". */
    public void add(double value) {
        if (!Double.isNaN(value)) {
            if (count == values.length) {
                makeRoom(count + 1);
            }
            values[count++] = value;
        }
    }

    private void makeRoom(int wanted) {
        values = Arrays.copyOf(values, Math.max(wanted, 2 * values.length));
    }

    /** Ends a replication; one that gave no value is left out of the mean. */
    public void endReplication() {
        if (count > begun) {
            addMean(Mean.ofRange(values, begun, count).getAsDouble());
            begun = count;
            sample = null;
        }
    }

    /** Takes up the replications of {@code later}, all of them ended, behind those there are. */
    public void join(Pool later) {
        if (count > begun || later.count > later.begun) {
            throw new IllegalStateException("a replication that has not ended cannot be joined to others");
        }
        if (count + later.count > values.length) {
            makeRoom(count + later.count);
        }
        System.arraycopy(later.values, 0, values, count, later.count);
        count += later.count;
        begun = count;
        sample = null;
        for (int i = 0; i < later.replications; i++) {
            addMean(later.means[i]);
        }
    }

    private void addMean(double mean) {
        if (replications == means.length) {
            means = Arrays.copyOf(means, Math.max(64, 2 * replications));
        }
        means[replications++] = mean;
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

    /**
     * Of n values the {@code floor(n share + 1e-9) + 1}-th smallest, at most the n-th: the first that is not among the share
     * {@code share} of the smallest. Nothing is interpolated.
     *
     * <p>Rule MARGIN-4.
     *
     * @param share in [0, 1]
     */
    public double lastOfShare(double share) {
        int place = (int) Math.min(count - 1, Math.floor(count * share + 1e-9));
        double[] copy = Arrays.copyOf(values, count);
        Selection.select(copy, place);
        return copy[place];
    }

    /** A summary of the replications ended so far, of which at least one must have given a value. */
    public Summary summary() {
        return sample().summary(
                        mean(),
                        begun == 1
                                ? 0
                                : StandardDeviation.ofRange(values, 0, begun).getAsDouble());
    }

    /** The mean over the replications ended so far, of which at least one must have given a value. */
    public Estimate mean() {
        return Estimators.mean(Arrays.copyOf(means, replications));
    }
}
