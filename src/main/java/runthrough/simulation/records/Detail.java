package runthrough.simulation.records;

/** How much of a replication is kept; each level keeps what the levels before it keep. */
public enum Detail {
    /** Totals and one row for each coil change. */
    CHANGES,
    /** Also the start and end of every work element. */
    ELEMENTS,
    /** Also every breakpoint of speeds and level. */
    TRACE
}
