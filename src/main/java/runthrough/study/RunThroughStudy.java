package runthrough.study;

import runthrough.handcalc.HandCalculation;
import runthrough.plant.Brief;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;

/** Runs the replications of a brief over a fixed number of threads and draws the verdict. */
public final class RunThroughStudy {
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
        int total = brief.run().replications();
        Replications replications = new Replications(brief.run(), maker, options);
        Fold fold = new Fold(brief.line());
        listener.progress(0, total);
        new OrderedRuns(options.threads())
                .run(
                        total,
                        replications::run,
                        replication -> take(replication, fold, listener, total),
                        listener::cancelled);
        if (fold.jointTime().count() == 0) {
            throw new StudyException("no coil change was completed in any of " + total
                    + " replications; give a longer run, or fewer coil changes to leave out");
        }
        Verdict verdict = new VerdictMaker(brief, fold).verdict();
        return new StudyResult(
                brief, verdict, HandCalculation.of(brief.line()), fold.totals(), fold.pooled(), fold.first());
    }

    private static void take(Replication replication, Fold fold, StudyListener listener, int total) {
        fold.add(replication);
        listener.replication(replication);
        listener.progress(replication.index() + 1, total);
    }
}
