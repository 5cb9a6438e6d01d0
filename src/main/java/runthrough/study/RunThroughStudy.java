package runthrough.study;

import java.util.OptionalDouble;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.Brief;
import runthrough.simulation.LineSimulator;
import runthrough.study.statistics.Narrowness;

/** Runs the replications of a brief over a fixed number of threads and draws the verdict. */
public final class RunThroughStudy {
    /** Fewer replications do not tell how much they differ, so no study ends for being precise before these. */
    private static final int ENOUGH_TO_TELL = 10;

    private final Brief brief;
    private final Runs.Maker maker;

    /** A study of {@code brief}, whose line must have passed its check. */
    public RunThroughStudy(Brief brief) {
        this(brief, plan -> new LineSimulator(brief.line(), plan)::run);
    }

    /** A study whose replications come from elsewhere than the simulator. */
    RunThroughStudy(Brief brief, Runs.Maker maker) {
        this.brief = brief;
        this.maker = maker;
    }

    /**
     * Runs it.
     *
     * @throws StudyException when a replication cannot go on, or none completed a coil change
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    public StudyResult run(StudyOptions options, StudyListener listener) {
        Fold fold = new Fold(brief.line());
        int total = brief.run().replications();
        listener.progress(0, total);
        extend(fold, brief, total, options, listener);
        return result(fold, brief);
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
        Fold fold = new Fold(brief.line());
        int limit = precision.maxReplications();
        Brief most = brief.with(brief.run().withReplications(limit));
        int batch = brief.run().replications();
        listener.progress(0, limit);
        Narrowness narrowness;
        do {
            int next = Math.min(limit, fold.totals().size() + batch);
            extend(fold, most, next, options, listener);
            narrowness = narrowness(fold, precision);
        } while (fold.totals().size() < limit
                && (!narrowness.reached() || fold.totals().size() < ENOUGH_TO_TELL)
                && !brief.line().isDeterministic());
        int run = fold.totals().size();
        listener.progress(limit, limit);
        return new SequentialResult(result(fold, brief.with(brief.run().withReplications(run))), narrowness);
    }

    private Narrowness narrowness(Fold fold, Precision precision) {
        if (brief.line().isDeterministic()) {
            return Narrowness.exact(precision.halfWidth(), precision.maxReplications());
        }
        OptionalDouble halfWidth = fold.hasChanges() ? fold.shareRunThrough().halfWidth() : OptionalDouble.empty();
        return Narrowness.of(precision.halfWidth(), halfWidth, fold.totals().size(), precision.maxReplications());
    }

    /** Takes up replications until there are {@code total}. */
    private void extend(Fold fold, Brief whole, int total, StudyOptions options, StudyListener listener) {
        int done = fold.totals().size();
        Replications replications = new Replications(whole.run(), maker, options);
        new OrderedRuns(options.threads())
                .run(
                        total - done,
                        i -> Gleaning.of(brief.line(), replications.run(done + i)),
                        gleaning -> take(gleaning, fold, listener, whole.run().replications()),
                        listener::cancelled);
    }

    private static StudyResult result(Fold fold, Brief brief) {
        if (!fold.hasChanges()) {
            throw new StudyException("no coil change was completed in any of "
                    + brief.run().replications()
                    + " replications; give a longer run, or fewer coil changes to leave out");
        }
        Verdict verdict = new VerdictMaker(brief, fold).verdict();
        return new StudyResult(
                brief,
                verdict,
                HandCalculation.of(brief.line()),
                fold.totals(),
                fold.pooled(),
                fold.coils(),
                fold.first());
    }

    private static void take(Gleaning gleaning, Fold fold, StudyListener listener, int total) {
        fold.add(gleaning);
        listener.replication(gleaning.replication());
        listener.progress(gleaning.replication().index() + 1, total);
    }
}
