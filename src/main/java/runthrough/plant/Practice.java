package runthrough.plant;

/** How the line gets from one coil to the next. */
public enum Practice {
    /** The new head is joined to the old tail while the process runs on stored strip. */
    JOIN_WITH_ACCUMULATOR,
    /** The new head is joined to the old tail; entry and process are one strip and stand meanwhile. */
    JOIN_WITHOUT_ACCUMULATOR,
    /** No joiner: the line stops, the tail is pulled out and the new head is threaded through. */
    RETHREAD;

    /** Whether entry and process are one strip with one speed. */
    public boolean isOneStrip() {
        return this != JOIN_WITH_ACCUMULATOR;
    }
}
