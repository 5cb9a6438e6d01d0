package runthrough.study;

import runthrough.simulation.records.Detail;

/**
 * How a study is run; none of it changes the answer.
 *
 * @param threads how many replications run at once; 0 for one after the other on the thread that asks
 * @param firstDetail what is kept of the first replication, for charts
 * @param detail what the listener sees of every other replication
 */
public record StudyOptions(int threads, Detail firstDetail, Detail detail) {

    /** As many threads as the machine has processors, and the coil changes of the first replication kept. */
    public static StudyOptions plain() {
        return new StudyOptions(Runtime.getRuntime().availableProcessors(), Detail.CHANGES, Detail.TOTALS);
    }

    /** Plain, for callers that have threads of their own. */
    public static StudyOptions onCallersThread() {
        return new StudyOptions(0, Detail.CHANGES, Detail.TOTALS);
    }

    /** Plain, with the work elements of every replication and the trace of the first. */
    public static StudyOptions forReport() {
        return new StudyOptions(Runtime.getRuntime().availableProcessors(), Detail.TRACE, Detail.ELEMENTS);
    }

    /** The same with another number of threads. */
    public StudyOptions withThreads(int number) {
        if (number < 1) {
            throw new IllegalArgumentException("threads = " + number + "; must be 1 or more");
        }
        return new StudyOptions(number, firstDetail, detail);
    }
}
