package runthrough.study;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.study.cause.CauseFinder;
import runthrough.study.statistics.RelativeHalfWidth;

/** Runs the replications of a brief over a fixed number of threads and draws the verdict. */
public final class RunThroughStudy {
    /** Fewer replications do not tell how much they differ, so no study ends for being precise before these. */
    private static final int ENOUGH_TO_TELL = 10;

    private final SimulationRequest request;
    private final Runs.Maker maker;

    /** A study of {@code request}, whose line must have passed its check. */
    public RunThroughStudy(SimulationRequest request) {
        this(request, plan -> LineSimulator.of(request.line(), plan)::run);
    }

    /** A study whose replications come from elsewhere than the simulator. */
    RunThroughStudy(SimulationRequest request, Runs.Maker maker) {
        this.request = request;
        this.maker = maker;
    }

    /**
     * Runs it.
     *
     * @throws StudyException when a replication cannot go on, or none completed a coil change
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public StudyResult run(StudyOptions options, StudyListener listener) {
        Aggregation aggregation = new Aggregation(request.line(), request.run());
        int total = request.run().replications();
        listener.progress(0, total);
        extend(aggregation, request, total, options, listener);
        return result(aggregation, request);
    }

    /**
     * Runs it until the share run through is known as well as asked for, or the limit is reached: first the replications of
     * the plan, then as many again, and so on. Whether to go on is decided between these batches alone, so that the same is
     * run with any number of threads.
     *
     * @throws StudyException when a replication cannot go on, or none completed a coil change
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public SequentialResult runUntil(Precision precision, StudyOptions options, StudyListener listener) {
        Aggregation aggregation = new Aggregation(request.line(), request.run());
        int limit = precision.maxReplications();
        SimulationRequest most = request.with(request.run().withReplications(limit));
        int batch = request.run().replications();
        listener.progress(0, limit);
        RelativeHalfWidth halfWidth;
        do {
            int next = Math.min(limit, aggregation.totals().size() + batch);
            extend(aggregation, most, next, options, listener);
            halfWidth = halfWidth(aggregation, precision);
        } while (aggregation.totals().size() < limit
                && (!halfWidth.reached() || aggregation.totals().size() < ENOUGH_TO_TELL)
                && !request.line().isDeterministic());
        int run = aggregation.totals().size();
        listener.progress(limit, limit);
        return new SequentialResult(
                result(aggregation, request.with(request.run().withReplications(run))), halfWidth);
    }

    private RelativeHalfWidth halfWidth(Aggregation aggregation, Precision precision) {
        if (request.line().isDeterministic()) {
            return RelativeHalfWidth.exact(precision.halfWidth(), precision.maxReplications());
        }
        OptionalDouble halfWidth =
                aggregation.hasChanges() ? aggregation.shareRunThrough().halfWidth() : OptionalDouble.empty();
        return RelativeHalfWidth.of(
                precision.halfWidth(), halfWidth, aggregation.totals().size(), precision.maxReplications());
    }

    /** Takes up replications until there are {@code total}. */
    private void extend(
            Aggregation aggregation, SimulationRequest whole, int total, StudyOptions options, StudyListener listener) {
        int done = aggregation.totals().size();
        Replications replications = new Replications(whole.run(), maker, options);
        CauseFinder causes = new CauseFinder(request.line());
        int room = ReplicationStatistics.room(whole.run());
        Queue<ChangePools> spare = new ConcurrentLinkedQueue<>();
        new OrderedRuns(options.threads())
                .run(
                        total - done,
                        i -> {
                            ChangePools pools =
                                    Objects.requireNonNullElseGet(spare.poll(), () -> new ChangePools(room));
                            ReplicationStatistics statistics = new ReplicationStatistics(request.line(), causes, pools);
                            Replication replication = replications.run(done + i, statistics);
                            statistics.end();
                            return Seen.of(replication, statistics, listener);
                        },
                        seen -> {
                            take(seen, aggregation, listener, whole.run().replications());
                            seen.statistics.pools().clear();
                            spare.add(seen.statistics.pools());
                        },
                        listener::cancelled);
    }

    private static StudyResult result(Aggregation aggregation, SimulationRequest request) {
        if (!aggregation.hasChanges()) {
            throw new StudyException("no coil change was completed in any of "
                    + request.run().replications()
                    + " replications; give a longer run, or fewer coil changes to leave out");
        }
        Verdict verdict = new VerdictMaker(request, aggregation).verdict();
        return new StudyResult(
                request,
                verdict,
                HandCalculation.of(request.line()),
                aggregation.totals(),
                aggregation.pooled(),
                aggregation.coils(),
                aggregation.first());
    }

    private static void take(Seen seen, Aggregation aggregation, StudyListener listener, int total) {
        aggregation.add(seen.replication, seen.statistics);
        seen.rest.run();
        listener.progress(seen.replication.index() + 1, total);
    }

    /** A replication that the listener has seen, and what it wants done in order. */
    private record Seen(Replication replication, ReplicationStatistics statistics, Runnable rest) {

        static Seen of(Replication replication, ReplicationStatistics statistics, StudyListener listener) {
            return new Seen(replication, statistics, listener.seen(replication, statistics.reasons(replication)));
        }
    }
}
