package runthrough.study.statistics;

import java.util.stream.IntStream;

/** Trials of each replication and how many of them succeeded; of a single one, where nothing is random. */
public final class Successes {
    private final long[] successes;
    private final long[] trials;
    private final boolean exact;

    /**
     * Counts of each replication.
     *
     * @param successes of each replication, at least one
     * @param trials of each replication
     * @param exact whether nothing is random, so that every replication gives what the first one does
     */
    public Successes(long[] successes, long[] trials, boolean exact) {
        this.successes = successes.clone();
        this.trials = trials.clone();
        this.exact = exact;
    }

    boolean exact() {
        return exact;
    }

    int replications() {
        return trials.length;
    }

    long trials(int replication) {
        return trials[place(replication)];
    }

    /** Share of successes in a replication; NaN without trials. */
    double share(int replication) {
        return (double) successes[place(replication)] / trials[place(replication)];
    }

    double[] shares(int replications) {
        return IntStream.range(0, replications).mapToDouble(this::share).toArray();
    }

    private int place(int replication) {
        return exact ? 0 : replication;
    }

    /** How far the share of all may be off, with a given confidence: not at all where it is exact. */
    Ends ends(double confidence) {
        if (exact) {
            return new Ends(0, 0);
        }
        Estimate share = Estimators.share(confidence, successes, trials);
        Interval interval = share.interval().orElseThrow();
        return new Ends(share.mean() - interval.low(), interval.high() - share.mean());
    }

    /** Distances from a share to the ends of its interval, {@code >= 0}. */
    record Ends(double below, double above) {}
}
