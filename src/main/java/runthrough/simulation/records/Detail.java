package runthrough.simulation.records;

/** How much of a replication is kept; each level keeps what the levels before it keep. */
public enum Detail {
    /** Totals only. */
    TOTALS,
    /** Also one row for each coil change. */
    CHANGES,
    /** Also the start and end of every work element. */
    ELEMENTS,
    /** Also every breakpoint of speeds and level. */
    TRACE;

    /** Whether there is a row for each coil change. */
    public boolean keepsChanges() {
        return compareTo(CHANGES) >= 0;
    }

    /** Whether the start and end of every work element are kept. */
    public boolean keepsWork() {
        return compareTo(ELEMENTS) >= 0;
    }
}
