package runthrough.study.statistics;

/**
 * A quantity measured at each coil change, all replications pooled. Percentiles are named by the decimal places of their
 * share ({@code p005} is at 0.005) and are defined at {@link Sample#percentile}.
 *
 * @param count how many values, {@code >= 1}
 * @param mean over the replications, each replication giving its own mean
 * @param sd standard deviation between coil changes (divisor n - 1); 0 with a single one
 * @param least smallest value
 * @param p005 0.5th percentile
 * @param p01 1st percentile
 * @param p05 5th percentile
 * @param p50 median
 * @param p90 90th percentile
 * @param p95 95th percentile
 * @param p99 99th percentile
 * @param p995 99.5th percentile
 * @param greatest largest value
 */
public record Summary(
        int count,
        Estimate mean,
        double sd,
        double least,
        double p005,
        double p01,
        double p05,
        double p50,
        double p90,
        double p95,
        double p99,
        double p995,
        double greatest) {

    /** The same of what cannot be negative, see {@link Estimate#notNegative}. */
    public Summary notNegative() {
        return new Summary(count, mean.notNegative(), sd, least, p005, p01, p05, p50, p90, p95, p99, p995, greatest);
    }
}
