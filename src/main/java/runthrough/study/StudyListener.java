package runthrough.study;

import java.util.List;
import java.util.Optional;
import runthrough.simulation.Replication;
import runthrough.study.cause.Reason;

/**
 * Sees a study go on. All but {@link #seen} is called on the thread that runs the study, in order of the replications' index, so
 * that rows can be written as they come and need not be kept.
 */
public interface StudyListener {

    /** A listener that does nothing. */
    StudyListener NONE = new StudyListener() {};

    /** A replication is done, with the detail asked for; it is not kept by the study. */
    default void replication(Replication replication) {}

    /**
     * The same with why each of its coil changes did not run through, empty for those that did. Unlike all else this is called on
     * the thread that ran the replication, several at once and in any order, so that what takes long is done there; what it gives
     * is called like all else. By default that is {@link #replication}.
     */
    default Runnable seen(Replication replication, List<Optional<Reason>> reasons) {
        return () -> replication(replication);
    }

    /** So many replications of so many are done; called once with 0 at the start, then after each. */
    default void progress(int done, int total) {}

    /** Asked between replications and while they run: true gives the study up, with a {@link java.util.concurrent.CancellationException}. */
    default boolean cancelled() {
        return false;
    }
}
