package runthrough.study.times;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import runthrough.study.statistics.Interval;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;

/**
 * Whether an element became shorter or longer over the sheet: the test of H. B. Mann (Nonparametric tests against trend,
 * Econometrica 13, 1945) and M. G. Kendall, with the correction for ties, and the slope of P. K. Sen (Estimates of the
 * regression coefficient based on Kendall's tau, JASA 63, 1968) with its interval; all from memory. Neither asks for a bell
 * curve, and single outliers hardly move them.
 *
 * @param n times compared
 * @param tau Kendall's tau-a: share of pairs that rise less share of those that fall, in [-1, 1]
 * @param p two-sided, normal approximation with continuity correction: how likely so strong a trend is by chance
 * @param adjusted p by Bonferroni over the elements of the sheet: among many elements some seem to change by chance, and this allows
 *     for it
 * @param slope median change from one coil change to the next (s)
 * @param low lower end of its 95 % interval (s)
 * @param high upper end (s)
 */
public record Trend(int n, double tau, double p, double adjusted, double slope, double low, double high) {

    /** With fewer times the normal approximation does not hold. */
    public static final int FEWEST = 8;

    /** Below this {@link #adjusted} counts as shown. */
    public static final double SIGNIFICANCE = 0.05;

    /** More times are thinned out evenly: the pairs grow with the square. */
    private static final int MOST = 2000;

    /** The trend of element {@code i}; empty with fewer than {@value #FEWEST} times. */
    static Optional<Trend> of(TimeSheet sheet, int i) {
        List<Observation> rows = thinned(sheet.complete(List.of(i)));
        if (rows.size() < FEWEST) {
            return Optional.empty();
        }
        return Optional.of(of(
                        rows.stream().mapToDouble(Observation::number).toArray(),
                        rows.stream().mapToDouble(row -> row.times().get(i)).toArray())
                .among(sheet.elements().size()));
    }

    /** The same as one of so many that are looked at. */
    private Trend among(int elements) {
        return new Trend(n, tau, p, Math.min(1, elements * p), slope, low, high);
    }

    private static List<Observation> thinned(List<Observation> rows) {
        int every = (rows.size() + MOST - 1) / MOST;
        return every <= 1
                ? rows
                : IntStream.range(0, rows.size())
                        .filter(i -> i % every == 0)
                        .mapToObj(rows::get)
                        .toList();
    }

    /**
     * The trend of {@code values}.
     *
     * @param at where each was seen, rising
     */
    static Trend of(double[] at, double[] values) {
        int n = values.length;
        double[] slopes = new double[n * (n - 1) / 2];
        long score = 0;
        int pairs = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                score += (long) Math.signum(values[j] - values[i]);
                slopes[pairs++] = (values[j] - values[i]) / (at[j] - at[i]);
            }
        }
        Arrays.sort(slopes);
        double variance = variance(values);
        double z = variance == 0 ? 0 : Math.max(0, Math.abs(score) - 1) / Math.sqrt(variance);
        double p = Math.min(1, 2 * NormalDistribution.of(0, 1).survivalProbability(z));
        double reach = quantile() * Math.sqrt(variance);
        return new Trend(
                n,
                (double) score / pairs,
                p,
                p,
                ordered(slopes, (pairs + 1) / 2.0),
                ordered(slopes, (pairs - reach) / 2),
                ordered(slopes, (pairs + reach) / 2 + 1));
    }

    /** Of Kendall's score without trend: [n(n-1)(2n+5) - sum of t(t-1)(2t+5) over groups of t ties] / 18. */
    private static double variance(double[] values) {
        Map<Double, Long> groups = Arrays.stream(values)
                .boxed()
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        double ties = groups.values().stream().mapToDouble(Trend::term).sum();
        return (term(values.length) - ties) / 18;
    }

    private static double term(double t) {
        return t * (t - 1) * (2 * t + 5);
    }

    private static double quantile() {
        return NormalDistribution.of(0, 1).inverseCumulativeProbability((1 + Interval.CONFIDENCE) / 2);
    }

    /** The value of rank {@code rank}, counted from 1, between neighbours by linear interpolation. */
    private static double ordered(double[] sorted, double rank) {
        double h = Math.max(0, Math.min(sorted.length - 1, rank - 1));
        int below = (int) h;
        return below + 1 < sorted.length
                ? sorted[below] + (h - below) * (sorted[below + 1] - sorted[below])
                : sorted[below];
    }

    /** Whether it is more than chance. */
    public boolean isShown() {
        return adjusted < SIGNIFICANCE;
    }
}
