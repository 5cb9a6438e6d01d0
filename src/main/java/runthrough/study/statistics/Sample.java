package runthrough.study.statistics;

import java.util.Arrays;

/** Values of one quantity, in order of size; for percentiles and charts. */
public final class Sample {
    private final double[] sorted;

    private Sample(double[] sorted) {
        this.sorted = sorted;
    }

    /** A sample of the given values; their order does not matter, none may be NaN. */
    public static Sample of(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        // NaN sorts last.
        if (sorted.length > 0 && Double.isNaN(sorted[sorted.length - 1])) {
            throw new IllegalArgumentException("a value that is not a number in a sample of " + sorted.length);
        }
        return new Sample(sorted);
    }

    /** How many values. */
    public int count() {
        return sorted.length;
    }

    /** Whether there is no value. */
    public boolean isEmpty() {
        return sorted.length == 0;
    }

    /** The {@code i}-th smallest value, from 0. */
    public double get(int i) {
        return sorted[i];
    }

    /** A copy of the values, smallest first. */
    public double[] values() {
        return sorted.clone();
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
        double h = (sorted.length - 1) * p;
        int below = (int) h;
        double low = sorted[below];
        return below + 1 < sorted.length ? low + (h - below) * (sorted[below + 1] - low) : low;
    }

    /** The share of values less than {@code limit}. */
    public double shareBelow(double limit) {
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

    /** Its summary, with the mean over replications as given. */
    public Summary summary(Estimate mean) {
        return new Summary(
                count(),
                mean,
                Moments.of(sorted).sdOrZero(),
                percentile(0),
                percentile(0.005),
                percentile(0.01),
                percentile(0.05),
                percentile(0.5),
                percentile(0.9),
                percentile(0.95),
                percentile(0.99),
                percentile(0.995),
                percentile(1));
    }
}
