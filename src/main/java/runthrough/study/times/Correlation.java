package runthrough.study.times;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;
import runthrough.study.statistics.Moments;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;

/**
 * How two elements go together, over the rows in which both were timed.
 *
 * @param first place of the one element in the sheet, counted from 0
 * @param second place of the other, {@code > first}
 * @param n rows
 * @param spearman correlation of ranks, ties sharing their mean rank: hardly moved by single outliers
 * @param pearson correlation of the times themselves: what the spread of sums depends on
 * @param p two-sided, of Spearman's by Student's t with n - 2 degrees of freedom
 * @param adjusted p by S. Holm (A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6,
 *     1979; from memory): among many pairs some look related by chance, and this allows for it
 */
public record Correlation(int first, int second, int n, double spearman, double pearson, double p, double adjusted) {

    /** With fewer rows correlations mean nothing. */
    public static final int FEWEST = 8;

    /** Of sheets whose elements do not go together so many at most show a pair that seems to (family-wise error). */
    private static final double SIGNIFICANCE = 0.05;

    /** All pairs of elements of which both vary, in the order of the sheet. */
    static List<Correlation> of(TimeSheet sheet) {
        List<Correlation> pairs = new ArrayList<>();
        for (int i = 0; i < sheet.elements().size(); i++) {
            for (int j = i + 1; j < sheet.elements().size(); j++) {
                List<Observation> rows = sheet.complete(List.of(i, j));
                if (rows.size() >= FEWEST) {
                    add(pairs, i, j, column(rows, i), column(rows, j));
                }
            }
        }
        return adjusted(pairs);
    }

    private static double[] column(List<Observation> rows, int i) {
        return rows.stream().mapToDouble(row -> row.times().get(i)).toArray();
    }

    private static void add(List<Correlation> pairs, int i, int j, double[] x, double[] y) {
        double spearman = pearson(ranks(x), ranks(y));
        if (!Double.isNaN(spearman)) {
            double p = p(spearman, x.length);
            pairs.add(new Correlation(i, j, x.length, spearman, pearson(x, y), p, p));
        }
    }

    /** Pearson's coefficient; NaN when one of the two does not vary. */
    static double pearson(double[] x, double[] y) {
        Moments mx = Moments.of(x);
        Moments my = Moments.of(y);
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += (x[i] - mx.mean()) * (y[i] - my.mean());
        }
        double r = sum / ((x.length - 1) * mx.sd() * my.sd());
        return Double.isNaN(r) ? r : Math.max(-1, Math.min(1, r));
    }

    /** Ranks from 1; equal values share the mean of theirs. */
    static double[] ranks(double[] values) {
        int[] order = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] ranks = new double[values.length];
        int from = 0;
        while (from < order.length) {
            int to = from;
            while (to < order.length && values[order[to]] == values[order[from]]) {
                to++;
            }
            for (int k = from; k < to; k++) {
                ranks[order[k]] = (from + 1 + to) / 2.0;
            }
            from = to;
        }
        return ranks;
    }

    private static double p(double r, int n) {
        double rest = 1 - r * r;
        return rest <= 0 ? 0 : 2 * TDistribution.of(n - 2).survivalProbability(Math.abs(r) * Math.sqrt((n - 2) / rest));
    }

    private static List<Correlation> adjusted(List<Correlation> pairs) {
        List<Correlation> byP = pairs.stream()
                .sorted(Comparator.comparingDouble(Correlation::p))
                .toList();
        List<Correlation> adjusted = new ArrayList<>();
        double greatest = 0;
        for (int k = 0; k < byP.size(); k++) {
            Correlation pair = byP.get(k);
            greatest = Math.max(greatest, Math.min(1, (byP.size() - k) * pair.p()));
            adjusted.add(new Correlation(
                    pair.first(), pair.second(), pair.n(), pair.spearman(), pair.pearson(), pair.p(), greatest));
        }
        return adjusted.stream()
                .sorted(Comparator.comparingInt(Correlation::first).thenComparingInt(Correlation::second))
                .toList();
    }

    /**
     * Whether it is more than chance, in view of all the pairs that were looked at: of sheets whose elements are independent, 5 % at most
     * have any such pair.
     */
    public boolean isShown() {
        return adjusted < SIGNIFICANCE;
    }
}
