package runthrough.chart;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoublePredicate;
import runthrough.study.statistics.Sample;

/**
 * A sample counted into bins of equal width, whose borders are round numbers of the unit shown. The few values far beyond
 * all others are counted apart, so that they do not squeeze the rest into a few bins.
 *
 * @param first lower border of the first bin, in widths of a bin
 * @param width of a bin in the unit shown, {@code > 0}
 * @param counts of each bin; a value on a border belongs to the bin above it
 * @param below how many values are below the first bin
 * @param beyond how many values are above the last bin
 * @param total of all values
 */
public record Histogram(double first, double width, List<Integer> counts, int below, int beyond, int total) {
    private static final int MOST_BINS = 48;
    private static final int FEWEST_BINS = 12;
    /** Values further from the nearest 90 % than this many times the spread of these are far from them. */
    private static final double FAR = 2.5;
    /** Values that differ by no more, relative to the greatest, are alike. */
    private static final double ALIKE = 1e-9;

    public Histogram {
        counts = List.copyOf(counts);
    }

    /**
     * Counts {@code sample}, {@code perSi} of the unit shown being one SI unit. The width follows the rule of Freedman and
     * Diaconis (1981), twice the interquartile range over the cube root of the count, rounded to 1, 2 or 5 times a power of
     * ten, within sensible numbers of bins.
     */
    public static Histogram of(Sample sample, double perSi) {
        return of(sample, perSi, 0);
    }

    /**
     * The same of values that were read in steps: the width is a multiple of the step, and borders lie half a step beside the
     * values, so that no bin holds more steps than another.
     *
     * @param step in the unit shown; 0 for none
     */
    public static Histogram of(Sample sample, double perSi, double step) {
        return of(sample, perSi, step, sample.get(0));
    }

    /** The same with the few values apart, too, that lie far below all others. */
    public static Histogram ofMost(Sample sample, double perSi) {
        return of(sample, perSi, 0, leastShown(sample));
    }

    private static Histogram of(Sample sample, double perSi, double step, double leastShown) {
        double least = leastShown * perSi;
        double shown = greatestShown(sample) * perSi;
        double scale = Math.max(Math.abs(least), Math.abs(shown));
        // All that are shown are alike, but for rounding: one bin around the value.
        if (!(shown - least > ALIKE * scale)) {
            double width = scale == 0 ? 1 : round(scale / 50);
            double[] values = sample.values();
            int below = count(values, value -> value * perSi < least - ALIKE * scale);
            int beyond = count(values, value -> value * perSi > shown + ALIKE * scale);
            return new Histogram(
                    least / width - 0.5,
                    width,
                    List.of(sample.count() - below - beyond),
                    below,
                    beyond,
                    sample.count());
        }
        double spread = (sample.percentile(0.75) - sample.percentile(0.25)) * perSi;
        double rule = 2 * spread / Math.cbrt(sample.count());
        double range = shown - least;
        double free = round(Math.min(range / FEWEST_BINS, Math.max(range / MOST_BINS, rule)));
        double width = step == 0 ? free : step * Math.max(1, Math.rint(free / step));
        double aside = step / 2 / width;
        double first = Math.floor(least / width + aside);
        int[] counts = new int[(int) (Math.floor(shown / width + aside) - first) + 1];
        int below = 0;
        int beyond = 0;
        for (double value : sample.values()) {
            int bin = (int) (Math.floor(value * perSi / width + aside) - first);
            if (bin < 0) {
                below++;
            } else if (bin < counts.length) {
                counts[bin]++;
            } else {
                beyond++;
            }
        }
        return new Histogram(
                first - aside, width, Arrays.stream(counts).boxed().toList(), below, beyond, sample.count());
    }

    private static int count(double[] values, DoublePredicate which) {
        return (int) Arrays.stream(values).filter(which).count();
    }

    /** The greatest value that is not far beyond all others. */
    private static double greatestShown(Sample sample) {
        double high = sample.percentile(0.95);
        double spread = high - sample.percentile(0.05);
        int last = sample.count() - 1;
        while (spread > 0 && sample.get(last) > high + FAR * spread) {
            last--;
        }
        return sample.get(last);
    }

    /** The least value that is not far below all others. */
    private static double leastShown(Sample sample) {
        double low = sample.percentile(0.05);
        double spread = sample.percentile(0.95) - low;
        int first = 0;
        while (spread > 0 && sample.get(first) < low - FAR * spread) {
            first++;
        }
        return sample.get(first);
    }

    /** The next of 1, 2 or 5 times a power of ten that is not below {@code value}. */
    private static double round(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(value)));
        double lead = value / power;
        return (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10) * power;
    }

    /** Lower border of bin {@code i}. */
    public double left(int i) {
        return (first + i) * width;
    }

    /** Share of all values that are in bin {@code i}, in [0, 1]. */
    public double share(int i) {
        return (double) counts.get(i) / total;
    }

    /** Share of all values that are above the last bin, in [0, 1]. */
    public double shareBeyond() {
        return (double) beyond / total;
    }

    /** Upper border of the last bin. */
    public double to() {
        return left(counts.size());
    }

    /** Share in the fullest bin. */
    public double greatestShare() {
        double greatest = 0;
        for (int i = 0; i < counts.size(); i++) {
            greatest = Math.max(greatest, share(i));
        }
        return greatest;
    }
}
