package runthrough.simulation.records;

import java.util.List;

/**
 * One work element done once; times in seconds of simulated time.
 *
 * @param change number of the coil change it counts by, from 1
 * @param pass of the joint, from 1; work done before the first joint counts as pass 1
 * @param list which of the three lists it stands in
 * @param element its place in that list, from 0
 * @param start when it began
 * @param end when it ended
 * @param putDown when it rested meanwhile, in order
 */
public record WorkRecord(
        int change, int pass, WorkList list, int element, double start, double end, List<PutDown> putDown) {

    public WorkRecord {
        putDown = List.copyOf(putDown);
    }

    /**
     * A time in which a preparation rested, because its people were wanted at the joint (s).
     *
     * @param from when it was put down
     * @param to when it was taken up again
     */
    public record PutDown(double from, double to) {}

    /** The three lists of work. */
    public enum WorkList {
        /** Done on the next coil while the line runs. */
        PREPARE,
        /** Done with the strip standing; needs only the tail. */
        TAIL,
        /** Done with the strip standing and the next coil prepared; the one element of a rethread stands here too. */
        JOIN
    }
}
