package runthrough.study;

import runthrough.simulation.records.ChangeFacts;

/** How many coil changes of a replication waited with the strip standing. */
final class Waited {
    private long any;
    private long forPreparation;
    private long forPeople;

    /** Takes up a coil change. */
    void add(ChangeFacts change) {
        any += one(change.waiting());
        forPreparation += one(change.waitingForPreparation());
        forPeople += one(change.waitingForPeople());
    }

    private static int one(double seconds) {
        return seconds > 0 ? 1 : 0;
    }

    /** For preparation or for people. */
    long any() {
        return any;
    }

    /** Because preparation was not done. */
    long forPreparation() {
        return forPreparation;
    }

    /** Because people were not there. */
    long forPeople() {
        return forPeople;
    }
}
