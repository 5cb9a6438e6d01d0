package runthrough.simulation.motion;

/** The entry section as the motion sees it. */
interface EntrySection {

    /** Starts at the process's speed at time 0. */
    void begin();

    /** A new coil is released: its usable length stands in the state. */
    void release();

    /** The coil change starts: brings the tail to rest. */
    void runOut();

    /** Makes its plan anew, after the process has. */
    void plan();

    /** Offers what it may do next. */
    void offerTo(NextEvent next);

    /** Whether the tail has just come to rest in the joiner; true once a coil. */
    boolean tailHasStopped();

    /** Whether the tail is at rest in the joiner, so that {@link #tailHasStopped} would say so. */
    default boolean isTailAtRest() {
        return false;
    }

    /** Whether the accumulator is full and both speeds are the same. */
    boolean isMatched();

    /** The greatest speed (m/s) that it allows the process. */
    default double processCeiling() {
        return Double.POSITIVE_INFINITY;
    }

    /** What a starved process heads for (m/s). */
    default double speedWhileStarved() {
        return 0;
    }
}
