package runthrough.study.statistics;

import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.statistics.descriptive.StandardDeviation;
import org.jspecify.annotations.Nullable;

/**
 * Very many values of one quantity in bounded memory: those that agree in sign, power of two and the next {@value #DIGITS} binary
 * digits are counted together, under the least of them. So an order statistic is a value that there was, at most the part
 * {@link #COARSENESS} below the exact one; it is exact where all that are counted together are equal, and at both ends. Not safe for use by several
 * threads.
 *
 * <p>Rule REPORT-15.
 */
final class Bins {
    /** By how much an order statistic may be too low, relative. */
    static final double COARSENESS = 0x1p-14;

    private static final int DIGITS = 14;
    private static final int OF_A_PAGE = 1 << DIGITS;
    private static final int MANTISSA = 52;
    /** Powers of two of a double, of either sign. */
    private static final int POWERS = 1 << 12;

    /** By sign and power of two, in order of size. */
    private final @Nullable Page[] pages = new Page[POWERS];

    private final StandardDeviation deviation = StandardDeviation.create();
    private int count;
    private double greatest = Double.NEGATIVE_INFINITY;

    /** The values from one power of two to the next. */
    private static final class Page {
        final int[] counts = new int[OF_A_PAGE];
        final double[] least = new double[OF_A_PAGE];

        void add(int bin, double value, int times) {
            least[bin] = counts[bin] == 0 ? value : Math.min(least[bin], value);
            counts[bin] += times;
        }
    }

    /** Takes up the first {@code number} of {@code values}, none of them NaN. */
    void add(double[] values, int number) {
        for (int i = 0; i < number; i++) {
            double value = values[i];
            int bin = bin(value);
            page(place(bin)).add(bin & (OF_A_PAGE - 1), value, 1);
            deviation.accept(value);
            greatest = Math.max(greatest, value);
        }
        count += number;
    }

    /** Takes up all of {@code others}. */
    void add(Bins others) {
        for (int place = 0; place < POWERS; place++) {
            Page page = others.pages[place];
            for (int bin = 0; page != null && bin < OF_A_PAGE; bin++) {
                if (page.counts[bin] > 0) {
                    page(place).add(bin, page.least[bin], page.counts[bin]);
                }
            }
        }
        deviation.combine(others.deviation);
        greatest = Math.max(greatest, others.greatest);
        count += others.count;
    }

    private Page page(int place) {
        Page page = pages[place];
        if (page == null) {
            page = new Page();
            pages[place] = page;
        }
        return page;
    }

    private static int place(int bin) {
        return (bin >> DIGITS) + POWERS / 2;
    }

    private Page[] used() {
        return Stream.of(pages).filter(Objects::nonNull).toArray(Page[]::new);
    }

    /** The leading bits of a number, so that greater numbers have greater ones; of both zeros the same. */
    private static int bin(double value) {
        long bits = Double.doubleToRawLongBits(value + 0.0);
        long ordered = bits ^ ((bits >> (Long.SIZE - 1)) & Long.MAX_VALUE);
        return (int) (ordered >> (MANTISSA - DIGITS));
    }

    /** How many values. */
    int count() {
        return count;
    }

    /** Their standard deviation, of all of them. */
    double deviation() {
        return deviation.getAsDouble();
    }

    /** All values, each as the least of those that it is counted with; the greatest as it is. */
    Sample sample() {
        Page[] used = used();
        double[] values = new double[different(used)];
        int[] upTo = new int[values.length];
        int place = 0;
        int sum = 0;
        for (Page page : used) {
            for (int bin = 0; bin < OF_A_PAGE; bin++) {
                if (page.counts[bin] > 0) {
                    sum += page.counts[bin];
                    values[place] = page.least[bin];
                    upTo[place++] = sum;
                }
            }
        }
        return place > 1 && upTo[place - 2] == count - 1 ? Sample.counted(values, upTo) : withGreatest(values, upTo);
    }

    /** The same with the greatest taken out of those that it was counted with, which are several. */
    private Sample withGreatest(double[] values, int[] upTo) {
        int last = values.length;
        double[] all = Arrays.copyOf(values, last + 1);
        int[] ends = Arrays.copyOf(upTo, last + 1);
        ends[last - 1] = count - 1;
        all[last] = greatest;
        ends[last] = count;
        return Sample.counted(all, ends);
    }

    private static int different(Page... pages) {
        int different = 0;
        for (Page page : pages) {
            for (int counted : page.counts) {
                different += counted > 0 ? 1 : 0;
            }
        }
        return different;
    }
}
