package runthrough.study.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Interval;

/**
 * Shares of a measure's variance: how much of it each source of randomness carries.
 *
 * <p>For a measure {@code Y} with independent sources {@code X_i} the first-order index {@code V(E(Y|X_i)) / V(Y)} is what
 * source i carries by itself, and the total index {@code E(V(Y|all but X_i)) / V(Y)} what it carries by itself and together
 * with others (I. M. Sobol', "Sensitivity estimates for nonlinear mathematical models", Mathematical Modelling and
 * Computational Experiments 1, 1993; T. Homma and A. Saltelli, "Importance measures in global sensitivity analysis of nonlinear
 * models", Reliability Engineering and System Safety 52, 1996). With samples {@code A_j}, {@code B_j} and {@code AB_j}, which
 * is {@code A_j} with source i of {@code B_j}, they are estimated by
 *
 * <ul>
 *   <li>first order: {@code mean of f(B_j) (f(AB_j) - f(A_j))}: A. Saltelli and others, "Variance based sensitivity analysis
 *       of model output. Design and estimator for the total sensitivity index", Computer Physics Communications 181, 2010,
 *       table 2 (b). The mean is taken off {@code f(B_j)} first, which changes nothing that is expected but takes away noise;
 *   <li>total: {@code mean of (f(A_j) - f(AB_j))^2 / 2}: M. J. W. Jansen, "Analysis of variance designs for model output",
 *       Computer Physics Communications 117, 1999; table 2 (f) there.
 * </ul>
 *
 * <p>A replication has many coil changes, which hang together: each has its own measure {@code Y_n}, a function of the random numbers of
 * all sources over the run up to it. The indices of the {@code Y_n} are averaged with their variances as weights, sums over
 * n of what is above over sums of the variances: the aggregated indices of F. Gamboa, A. Janon, T. Klein and A. Lagnoux,
 * "Sensitivity analysis for multidimensional and functional outputs", Electronic Journal of Statistics 8, 2014. What differs
 * from one n to another without chance, such as the coils of a schedule, is no variance here. Only replications are
 * independent, so intervals come from them: the ratio of the sums by the jackknife, its pseudo-values with Student's t (R. G.
 * Miller, "The jackknife: a review", Biometrika 61, 1974). Sources are cited from memory.
 *
 * @param mean of the measure over coil changes
 * @param variance of it at a coil change, averaged over coil changes; 0 where nothing moves it
 * @param sources in the order in which they were exchanged; empty where there is no variance to share
 * @param firstOrders sum of all first-order indices; what is missing to 1 comes from sources acting together
 */
public record SobolIndices(double mean, double variance, List<Index> sources, Estimate firstOrders) {
    /** A spread of less than this part of the mean comes from rounding alone. */
    private static final double ROUNDING = 1e-12;

    /** An index of less than this comes from rounding alone. */
    private static final double NOTHING = 1e-9;

    public SobolIndices {
        sources = List.copyOf(sources);
    }

    /**
     * The indices of one source, each from 0 to 1 but for the error of estimation.
     *
     * @param first what it carries by itself
     * @param total what it carries by itself and together with others
     */
    public record Index(Estimate first, Estimate total) {

        /** Whether it is shown that the source moves the measure by itself. */
        public boolean isFirstShown() {
            return isShown(first);
        }

        /** Whether it is shown that the source moves the measure at all. */
        public boolean isShown() {
            return isShown(total);
        }

        private static boolean isShown(Estimate index) {
            return index.interval().map(Interval::low).orElse(index.mean()) > NOTHING;
        }
    }

    /** The indices from at least two replications, each with as many values and sources. */
    static SobolIndices of(List<ExchangedSamples> replications) {
        double[] means = means(replications);
        double[] variances = new double[replications.size()];
        double unbiased = 2.0 * replications.size() / (2.0 * replications.size() - 1);
        for (int j = 0; j < variances.length; j++) {
            variances[j] = unbiased * squares(replications.get(j), means) / means.length;
        }
        double mean = mean(means);
        double variance = mean(variances);
        if (!(Math.sqrt(variance) > ROUNDING * Math.abs(mean))) {
            return new SobolIndices(mean, 0, List.of(), Estimators.mean(0));
        }
        List<Index> indices = new ArrayList<>();
        double[] allFirsts = new double[variances.length];
        for (int i = 0; i < replications.get(0).exchanged().length; i++) {
            int source = i;
            double[] firsts = replications.stream()
                    .mapToDouble(replication -> first(replication, source, means))
                    .toArray();
            double[] totals = replications.stream()
                    .mapToDouble(replication -> total(replication, source))
                    .toArray();
            indices.add(new Index(ratio(firsts, variances), ratio(totals, variances)));
            IntStream.range(0, firsts.length).forEach(j -> allFirsts[j] += firsts[j]);
        }
        return new SobolIndices(mean, variance, indices, ratio(allFirsts, variances));
    }

    /** The mean at each coil change, over A and B of all replications. */
    private static double[] means(List<ExchangedSamples> replications) {
        double[] means = new double[replications.get(0).a().length];
        for (int n = 0; n < means.length; n++) {
            for (ExchangedSamples exchange : replications) {
                means[n] += exchange.a()[n] + exchange.b()[n];
            }
            means[n] /= 2.0 * replications.size();
        }
        return means;
    }

    private static double squares(ExchangedSamples exchange, double[] means) {
        double sum = 0;
        for (int n = 0; n < means.length; n++) {
            double a = exchange.a()[n] - means[n];
            double b = exchange.b()[n] - means[n];
            sum += (a * a + b * b) / 2;
        }
        return sum;
    }

    private static double first(ExchangedSamples exchange, int source, double[] means) {
        double[] exchanged = exchange.exchanged()[source];
        double sum = 0;
        for (int n = 0; n < means.length; n++) {
            sum += (exchange.b()[n] - means[n]) * (exchanged[n] - exchange.a()[n]);
        }
        return sum / means.length;
    }

    private static double total(ExchangedSamples exchange, int source) {
        double[] exchanged = exchange.exchanged()[source];
        double sum = 0;
        for (int n = 0; n < exchanged.length; n++) {
            double difference = exchange.a()[n] - exchanged[n];
            sum += difference * difference / 2;
        }
        return sum / exchanged.length;
    }

    /** The ratio of two means, by the jackknife. */
    private static Estimate ratio(double[] numerators, double[] denominators) {
        int count = numerators.length;
        double numerator = mean(numerators) * count;
        double denominator = mean(denominators) * count;
        double ratio = numerator / denominator;
        double[] pseudo = new double[count];
        for (int j = 0; j < count; j++) {
            double without = (numerator - numerators[j]) / (denominator - denominators[j]);
            pseudo[j] = count * ratio - (count - 1) * without;
        }
        return Estimators.mean(pseudo);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
