package runthrough.study.times;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.simulation.random.Draws;
import runthrough.study.statistics.Moments;
import runthrough.study.statistics.Sample;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;

/**
 * What it does to long joints to draw each element on its own, as if slow people were not slow everywhere: percentiles of the
 * observed sums of the elements with standing strip, against those of sums of which each element is resampled from its own
 * column. The interval is a percentile bootstrap over the rows (B. Efron and R. J. Tibshirani, An Introduction to the
 * Bootstrap, 1993, ch. 13; from memory). Few rows lie beyond a high percentile, so such intervals miss more often than they
 * should: whether elements go together at all is for {@link Correlation} to say.
 *
 * @param rows in which all those elements were timed
 * @param together mean and standard deviation of the observed sums (s)
 * @param apartSd standard deviation of sums of elements drawn on their own (s)
 * @param percentiles those looked at
 */
public record JointTail(int rows, Moments together, double apartSd, List<Percentile> percentiles) {

    /** With fewer complete rows nothing can be said of a tail. */
    public static final int FEWEST = 20;

    private static final double[] AT = {0.9, 0.95, 0.99};
    private static final int RESAMPLES = 499;
    private static final int SUMS = 2000;
    private static final int SURE_SUMS = 100_000;
    private static final int STREAM = 0;
    private static final double LOWER = 0.025;

    public JointTail {
        percentiles = List.copyOf(percentiles);
    }

    /**
     * A percentile of the joint cycle time.
     *
     * @param p share of joints below, in (0, 1)
     * @param together of the rows as observed (s)
     * @param apart of elements drawn on their own (s)
     * @param low lower end of the 95 % interval of together less apart (s)
     * @param high upper end (s)
     */
    public record Percentile(double p, double together, double apart, double low, double high) {}

    /** That of {@code sheet}; empty with fewer than two standing elements or {@value #FEWEST} complete rows. */
    static Optional<JointTail> of(TimeSheet sheet, long seed) {
        List<Integer> standing = sheet.standing();
        List<Observation> rows = sheet.complete(standing);
        return standing.size() < 2 || rows.size() < FEWEST
                ? Optional.empty()
                : Optional.of(new Resampling(standing, rows, new Draws(seed, STREAM, 0)).tail());
    }

    /** Rows by element, {@code columns[element][row]}, and the random numbers they are drawn with. */
    private static final class Resampling {
        private final double[][] columns;
        private final int n;
        private final Draws draws;

        Resampling(List<Integer> standing, List<Observation> rows, Draws draws) {
            this.columns = standing.stream()
                    .map(i ->
                            rows.stream().mapToDouble(row -> row.times().get(i)).toArray())
                    .toArray(double[][]::new);
            this.n = rows.size();
            this.draws = draws;
        }

        JointTail tail() {
            int[] all = IntStream.range(0, n).toArray();
            double[] observed = sums(all);
            Sample together = Sample.of(observed);
            Sample apart = Sample.of(sumsApart(all, SURE_SUMS));
            double[][] differences = new double[AT.length][RESAMPLES];
            for (int b = 0; b < RESAMPLES; b++) {
                int[] chosen = IntStream.range(0, n).map(i -> draws.below(n)).toArray();
                Sample joint = Sample.of(sums(chosen));
                Sample separate = Sample.of(sumsApart(chosen, SUMS));
                for (int k = 0; k < AT.length; k++) {
                    differences[k][b] = joint.percentile(AT[k]) - separate.percentile(AT[k]);
                }
            }
            List<Percentile> percentiles = IntStream.range(0, AT.length)
                    .mapToObj(k -> percentile(AT[k], together, apart, Sample.of(differences[k])))
                    .toList();
            double variance = Arrays.stream(columns)
                    .mapToDouble(column -> Moments.of(column).sd())
                    .map(sd -> sd * sd)
                    .sum();
            return new JointTail(n, Moments.of(observed), Math.sqrt(variance), percentiles);
        }

        private static Percentile percentile(double p, Sample together, Sample apart, Sample differences) {
            return new Percentile(
                    p,
                    together.percentile(p),
                    apart.percentile(p),
                    differences.percentile(LOWER),
                    differences.percentile(1 - LOWER));
        }

        private double[] sums(int[] rows) {
            return Arrays.stream(rows)
                    .mapToDouble(row -> Arrays.stream(columns)
                            .mapToDouble(column -> column[row])
                            .sum())
                    .toArray();
        }

        private double[] sumsApart(int[] rows, int count) {
            double[] sums = new double[count];
            for (int i = 0; i < count; i++) {
                for (double[] column : columns) {
                    sums[i] += column[rows[draws.below(rows.length)]];
                }
            }
            return sums;
        }
    }
}
