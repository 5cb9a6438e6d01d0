package runthrough.study.statistics;

import java.util.Arrays;
import org.apache.commons.numbers.arrays.Selection;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.StandardDeviation;
import org.jspecify.annotations.Nullable;

/**
 * Takes up one quantity, coil change by coil change and replication by replication. Up to {@link #MOST_EXACT} values are kept one by
 * one, and order statistics are exact; of more the memory is bounded, see {@link Bins}. Which it is depends on nothing but their
 * number. Not safe for use by several threads.
 *
 * <p>Rule MARGIN-4.
 */
public final class Pool {
    /** Of so many values all are kept. */
    public static final int MOST_EXACT = 1 << 18;
    /** By how much an order statistic of more values may be too low, relative. */
    public static final double COARSENESS = Bins.COARSENESS;

    private static final int USUAL_ROOM = 64;
    private static final double[] NONE = {};

    private final int room;
    private double[] values = NONE;
    private int count;
    private int begun;
    private double[] means = new double[1];
    private int replications;
    private @Nullable Sample sample;
    /** The values of all replications ended, once they are too many; {@code values} then holds none of them. */
    private @Nullable Bins bins;

    /** An empty pool. */
    public Pool() {
        this(USUAL_ROOM);
    }

    /** An empty pool that takes room for so many values once there is one, and grows as it must. */
    public Pool(int room) {
        this.room = room;
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
        values = Arrays.copyOf(values, Math.max(wanted, values.length == 0 ? room : 2 * values.length));
    }

    /** Ends a replication; one that gave no value is left out of the mean. */
    public void endReplication() {
        if (count > begun) {
            addMean(Mean.ofRange(values, begun, count).getAsDouble());
            begun = count;
            boundMemory();
        }
    }

    /** Counts what is kept together with its likes, where it is too much; all replications being ended. */
    private void boundMemory() {
        sample = null;
        if (bins != null || count > MOST_EXACT) {
            countTogether();
        }
    }

    private Bins countTogether() {
        bins = bins == null ? new Bins() : bins;
        bins.add(values, count);
        count = 0;
        begun = 0;
        values = NONE;
        return bins;
    }

    /** Takes up the replications of {@code later}, all of them ended, behind those there are. */
    public void join(Pool later) {
        if (count > begun || later.count > later.begun) {
            throw new IllegalStateException("a replication that has not ended cannot be joined to others");
        }
        sample = null;
        if (later.bins != null) {
            countTogether().add(later.bins);
        }
        if (bins == null && count + later.count <= MOST_EXACT) {
            append(later.values, later.count);
        } else {
            countTogether().add(later.values, later.count);
        }
        for (int i = 0; i < later.replications; i++) {
            addMean(later.means[i]);
        }
    }

    /** Forgets everything but the room that it has taken, for another replication. */
    public void clear() {
        count = 0;
        begun = 0;
        replications = 0;
        sample = null;
        bins = null;
    }

    private void append(double[] others, int number) {
        if (count + number > values.length) {
            makeRoom(count + number);
        }
        System.arraycopy(others, 0, values, count, number);
        count += number;
        begun = count;
    }

    private void addMean(double mean) {
        if (replications == means.length) {
            means = Arrays.copyOf(means, Math.max(64, 2 * replications));
        }
        means[replications++] = mean;
    }

    /** How many values so far. */
    public int count() {
        return count + (bins == null ? 0 : bins.count());
    }

    /** All values of the replications ended so far. */
    public Sample sample() {
        if (sample == null) {
            sample = bins == null ? Sample.of(Arrays.copyOf(values, begun)) : bins.sample();
        }
        return sample;
    }

    /**
     * Of n values the {@code floor(n share + 1e-9) + 1}-th smallest, at most the n-th: the first that is not among the share
     * {@code share} of the smallest. Nothing is interpolated.
     *
     * @param share in [0, 1]
     */
    public double lastOfShare(double share) {
        int all = count();
        int place = (int) Math.min(all - 1, Math.floor(all * share + 1e-9));
        if (bins != null) {
            return sample().get(place);
        }
        double[] copy = Arrays.copyOf(values, count);
        Selection.select(copy, place);
        return copy[place];
    }

    /** A summary of the replications ended so far, of which at least one must have given a value. */
    public Summary summary() {
        return sample().summary(mean(), deviation());
    }

    private double deviation() {
        if (bins != null) {
            return bins.deviation();
        }
        return begun == 1 ? 0 : StandardDeviation.ofRange(values, 0, begun).getAsDouble();
    }

    /** The mean over the replications ended so far, of which at least one must have given a value. */
    public Estimate mean() {
        return Estimators.mean(Arrays.copyOf(means, replications));
    }
}
