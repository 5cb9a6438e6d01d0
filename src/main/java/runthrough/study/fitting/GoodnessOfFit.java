package runthrough.study.fitting;

import org.apache.commons.statistics.distribution.ContinuousDistribution;

/**
 * How far times are from a distribution.
 *
 * @param andersonDarling A squared: distances between the two distribution functions, weighted towards the tails, {@code > 0}
 * @param kolmogorovSmirnov D: the greatest distance between them, in (0, 1]
 */
public record GoodnessOfFit(double andersonDarling, double kolmogorovSmirnov) {

    /** Keeps logarithms finite where a time lies where the distribution has none. */
    private static final double LEAST = 1e-300;

    /** The distance of {@code times} from {@code distribution}; the times must all have been seen to their end. */
    public static GoodnessOfFit of(FittedDistribution distribution, Durations times) {
        ContinuousDistribution functions = distribution.numbers().functions();
        double shift = distribution.shift();
        int n = times.n();
        double[] below = new double[n];
        double[] beyond = new double[n];
        double greatest = 0;
        for (int i = 0; i < n; i++) {
            below[i] = functions.cumulativeProbability(times.get(i) - shift);
            beyond[i] = functions.survivalProbability(times.get(i) - shift);
            greatest = Math.max(greatest, Math.max(below[i] - (double) i / n, (i + 1.0) / n - below[i]));
        }
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += (2 * i + 1) * (Math.log(Math.max(below[i], LEAST)) + Math.log(Math.max(beyond[n - 1 - i], LEAST)));
        }
        return new GoodnessOfFit(-n - sum / n, greatest);
    }
}
