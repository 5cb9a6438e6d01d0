package runthrough.study;

import runthrough.simulation.records.ChangeRecord;

/**
 * How many coil changes of a replication waited with the strip standing.
 *
 * @param any for preparation or for people
 * @param forPreparation because preparation was not done
 * @param forPeople because people were not there
 */
record Waited(long any, long forPreparation, long forPeople) {
    static final Waited NONE = new Waited(0, 0, 0);

    Waited with(ChangeRecord change) {
        return new Waited(
                any + one(change.waiting()),
                forPreparation + one(change.waitingForPreparation()),
                forPeople + one(change.waitingForPeople()));
    }

    private static int one(double seconds) {
        return seconds > 0 ? 1 : 0;
    }
}
