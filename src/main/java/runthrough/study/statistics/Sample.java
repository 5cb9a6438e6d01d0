package runthrough.study.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.numbers.arrays.Selection;

/**
 * Values of one quantity, in order of size; for percentiles and charts. They are put in order when somebody first asks for more
 * than a summary. Safe for use by several threads.
 */
public final class Sample {
    /** The shares that a {@link Summary} gives. */
    private static final double[] SUMMARY = {0, 0.005, 0.01, 0.05, 0.5, 0.9, 0.95, 0.99, 0.995, 1};

    private final double[] values;
    private boolean isSorted;

    private Sample(double[] values) {
        this.values = values;
    }

    /** A sample of the given values; their order does not matter, none may be NaN. */
    public static Sample of(double... values) {
        for (double value : values) {
            if (Double.isNaN(value)) {
                throw new IllegalArgumentException("a value that is not a number in a sample of " + values.length);
            }
        }
        return new Sample(values.clone());
    }

    private synchronized double[] sorted() {
        if (!isSorted) {
            Arrays.parallelSort(values);
            isSorted = true;
        }
        return values;
    }

    /** How many values. */
    public int count() {
        return values.length;
    }

    /** Whether there is no value. */
    public boolean isEmpty() {
        return values.length == 0;
    }

    /** The {@code i}-th smallest value, from 0. */
    public double get(int i) {
        return sorted()[i];
    }

    /** A copy of the values, smallest first. */
    public double[] values() {
        return sorted().clone();
    }

    /**
     * The value below which the share {@code p} of the sample lies, by linear interpolation between order statistics: with
     * the values {@code x(0) <= ... <= x(n-1)} and {@code h = (n - 1) p}, {@code x(floor h) + (h - floor h) (x(floor h + 1)
     * - x(floor h))}. So 0 gives the least, 1 the greatest, and 0.5 of an even number the middle between the two in the
     * middle.
     *
     * <p>Rule REPORT-15.
     *
     * @param p in [0, 1]
     */
    public double percentile(double p) {
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("percentile at " + p + "; must be from 0 to 1");
        }
        return between(sorted(), p);
    }

    /** As {@link #percentile}, of values of which the one below and the one above it are where they belong. */
    private static double between(double[] ordered, double p) {
        double h = (ordered.length - 1) * p;
        int below = (int) h;
        double low = ordered[below];
        return below + 1 < ordered.length ? low + (h - below) * (ordered[below + 1] - low) : low;
    }

    /** The share of values less than {@code limit}. */
    public double shareBelow(double limit) {
        double[] sorted = sorted();
        int from = 0;
        int to = sorted.length;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (sorted[middle] < limit) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return (double) from / sorted.length;
    }

    /** Its summary, with mean and standard deviation as given. Only what it names is put in order. */
    synchronized Summary summary(Estimate mean, double sd) {
        if (!isSorted) {
            Selection.select(values, placesOfSummary());
        }
        double[] at = Arrays.stream(SUMMARY).map(p -> between(values, p)).toArray();
        return new Summary(count(), mean, sd, at[0], at[1], at[2], at[3], at[4], at[5], at[6], at[7], at[8], at[9]);
    }

    private int[] placesOfSummary() {
        int last = values.length - 1;
        return Arrays.stream(SUMMARY)
                .mapToInt(p -> (int) (last * p))
                .flatMap(below -> IntStream.of(below, Math.min(below + 1, last)))
                .toArray();
    }
}
