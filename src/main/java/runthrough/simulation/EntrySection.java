package runthrough.simulation;

/** The entry section as the line's run sees it. */
interface EntrySection {

    /** Starts at the process's speed at time 0. */
    void begin();

    /** A new coil is released: its usable length stands in the strip. */
    void release();

    /** The coil change starts: brings the tail to rest. */
    void runOut();

    /** Makes its plan anew, after the process has. */
    void plan();

    /** Offers what it may do next. */
    void offerTo(NextEvent next);

    /** Does one of the events that it offered, other than the start of a coil change. */
    void perform(StateEvent event);

    /** Whether the tail has just come to rest in the joiner; true once a coil. */
    boolean tailHasStopped();

    /** Whether the accumulator is full and both speeds are the same. */
    boolean isMatched();

    /** Whether it could run but stands, the accumulator being full. */
    boolean isBlocked();

    /** What it is doing, for the trace. */
    Trace.EntryState state();
}
