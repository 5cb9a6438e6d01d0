package runthrough.study;

import runthrough.plant.Brief;

/** Runs the replications of a brief and draws the verdict. */
public final class RunThroughStudy {
    private final Brief brief;

    /** A study of {@code brief}, whose line must have passed its check. */
    public RunThroughStudy(Brief brief) {
        this.brief = brief;
    }

    /**
     * Runs it.
     *
     * @throws StudyException when a replication cannot go on, or none completed a coil change
     * @throws java.util.concurrent.CancellationException when the listener or an interrupt gave it up
     */
    @SuppressWarnings("DoNotCallSuggester")
    public StudyResult run(StudyOptions options, StudyListener listener) {
        throw new StudyException("no study yet of " + brief.title() + " with " + options + " and " + listener);
    }
}
