package runthrough.simulation.motion;

/** Takes what the motion brings about in a coil change. */
public interface CoilChangeEvents {

    /** T0. */
    void changeStarts();

    /** T1: the tail stands in the joiner. */
    void tailStops();

    /** The entry has become matched. */
    void entryMatched();

    /** The tail of the running coil has left its uncoiler, before T1. */
    void tailLeavesUncoiler();
}
