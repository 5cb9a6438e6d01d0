package runthrough.study;

import runthrough.simulation.Replication;

/**
 * Sees a study go on. All is called on the thread that runs the study, in order of the replications' index, so
 * that rows can be written as they come and need not be kept.
 */
public interface StudyListener {

    /** A listener that does nothing. */
    StudyListener NONE = new StudyListener() {};

    /** A replication is done, with the detail asked for; it is not kept by the study. */
    default void replication(Replication replication) {}

    /** So many replications of so many are done; called once with 0 at the start, then after each. */
    default void progress(int done, int total) {}

    /** Asked between replications: true gives the study up, with a {@link java.util.concurrent.CancellationException}. */
    default boolean cancelled() {
        return false;
    }
}
