package runthrough.study.times;

import java.util.Arrays;
import java.util.List;
import runthrough.study.statistics.Sample;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;

/**
 * Times that stand apart from the others of their element: J. W. Tukey's fences (Exploratory Data Analysis, 1977, ch. 2; from
 * memory) drawn on the logarithms of the times. Times of work have a long right tail, and fences drawn on the times
 * themselves would call much of it outlying; on logarithms a doubling counts like a halving.
 *
 * <p>With the quartiles Q1 and Q3 of the logarithms, the fences are at Q1 - 1.5 (Q3 - Q1) and Q3 + 1.5 (Q3 - Q1); a time beyond
 * 3 (Q3 - Q1) is far out. About 7 in 1000 lognormal times lie outside by chance alone, 2 in a million far out. Where the watch
 * was read so coarsely that the quartiles are closer than one step, they count as one step apart. A time of 0 has no logarithm:
 * it lies below any fence.
 *
 * @param low lower fence (s); NaN with fewer than {@value #FEWEST} times
 * @param high upper fence (s); NaN with fewer than {@value #FEWEST} times
 * @param found what lies outside, in the order of the sheet
 */
public record Outliers(double low, double high, List<Outlier> found) {

    /** Its name, for users. */
    public static final String RULE =
            "Tukey's fences on the logarithms of the times, 1.5 interquartile ranges beyond the quartiles";

    /** With fewer times quartiles mean nothing. */
    static final int FEWEST = 8;

    /** Share of lognormal times that lie outside by chance. */
    public static final double BY_CHANCE = 0.007;

    private static final double OUTSIDE = 1.5;
    private static final double FAR_OUT = 3;

    public Outliers {
        found = List.copyOf(found);
    }

    /**
     * One of them.
     *
     * @param row it stands in
     * @param time that was measured (s)
     * @param farOut whether it lies more than 3 interquartile ranges beyond the quartiles
     */
    public record Outlier(Observation row, double time, boolean farOut) {}

    /** Those of element {@code i}, timed in steps of {@code step} (s; 0 for no step). */
    static Outliers of(TimeSheet sheet, int i, double step) {
        double[] times = sheet.times(i);
        double[] logarithms =
                Arrays.stream(times).filter(time -> time > 0).map(Math::log).toArray();
        if (logarithms.length < FEWEST) {
            return new Outliers(Double.NaN, Double.NaN, List.of());
        }
        Sample sample = Sample.of(logarithms);
        double q1 = sample.percentile(0.25);
        double q3 = sample.percentile(0.75);
        double distance = Math.max(q3 - q1, step * Math.exp(-sample.percentile(0.5)));
        double low = Math.exp(q1 - OUTSIDE * distance);
        double high = Math.exp(q3 + OUTSIDE * distance);
        double farBelow = Math.exp(q1 - FAR_OUT * distance);
        double farAbove = Math.exp(q3 + FAR_OUT * distance);
        List<Outlier> found = sheet.rows().stream()
                .filter(row -> row.times().get(i) < low || row.times().get(i) > high)
                .map(row -> new Outlier(
                        row,
                        row.times().get(i),
                        row.times().get(i) < farBelow || row.times().get(i) > farAbove))
                .toList();
        return new Outliers(low, high, found);
    }
}
