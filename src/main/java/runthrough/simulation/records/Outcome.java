package runthrough.simulation.records;

/** What a coil change did to the process: the worst state present from its start until the start of the next. */
public enum Outcome {
    /** The process held its rated speed. */
    RAN_THROUGH,
    /** The process ran slower on a low level. */
    SLOWED,
    /** The process stopped because strip was lacking. */
    STOPPED
}
