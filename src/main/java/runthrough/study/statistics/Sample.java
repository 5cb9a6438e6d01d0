package runthrough.study.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.numbers.arrays.Selection;
import org.jspecify.annotations.Nullable;

/**
 * Values of one quantity, in order of size; for percentiles and charts. They are put in order when somebody first asks for more
 * than a summary. Safe for use by several threads.
 */
public final class Sample {
    /** The shares that a {@link Summary} gives. */
    private static final double[] SUMMARY = {0, 0.005, 0.01, 0.05, 0.5, 0.9, 0.95, 0.99, 0.995, 1};

    private final double[] values;
    /** How many values there are up to each one of {@code values}, that one with all its likes included; null where each is one. */
    private final int @Nullable [] upTo;

    private boolean isSorted;

    private Sample(double[] values, int @Nullable [] upTo) {
        this.values = values;
        this.upTo = upTo;
        isSorted = upTo != null;
    }

    /** A sample of the given values; their order does not matter, none may be NaN. */
    public static Sample of(double... values) {
        for (double value : values) {
            if (Double.isNaN(value)) {
                throw new IllegalArgumentException("a value that is not a number in a sample of " + values.length);
            }
        }
        return new Sample(values.clone(), null);
    }

    /** A sample of {@code values}, rising, of which there are {@code upTo} up to each one, that one with all its likes included. */
    static Sample counted(double[] values, int[] upTo) {
        return new Sample(values, upTo);
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
        return upTo == null ? values.length : upTo.length == 0 ? 0 : upTo[upTo.length - 1];
    }

    /** Whether there is no value. */
    public boolean isEmpty() {
        return values.length == 0;
    }

    /** The {@code i}-th smallest value, from 0. */
    public double get(int i) {
        sorted();
        return at(i);
    }

    /** Where among the counted values the {@code i}-th is, from 0. */
    private static int placeOf(int i, int[] upTo) {
        int found = Arrays.binarySearch(upTo, i + 1);
        return found < 0 ? -found - 1 : found;
    }

    /** A copy of the values, smallest first. */
    public double[] values() {
        return upTo == null
                ? sorted().clone()
                : IntStream.range(0, count()).mapToDouble(this::get).toArray();
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
        sorted();
        return between(p);
    }

    /** As {@link #percentile}, the value below and the one above it being where they belong. */
    private double between(double p) {
        int count = count();
        double h = (count - 1) * p;
        int below = (int) h;
        double low = at(below);
        return below + 1 < count ? low + (h - below) * (at(below + 1) - low) : low;
    }

    private double at(int i) {
        return values[upTo == null ? i : placeOf(i, upTo)];
    }

    /** The share of values less than {@code limit}. */
    public double shareBelow(double limit) {
        sorted();
        int from = 0;
        int to = count();
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (at(middle) < limit) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return (double) from / count();
    }

    /** Its summary, with mean and standard deviation as given. Only what it names is put in order. */
    synchronized Summary summary(Estimate mean, double sd) {
        if (!isSorted) {
            Selection.select(values, placesOfSummary());
        }
        double[] at = Arrays.stream(SUMMARY).map(this::between).toArray();
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
