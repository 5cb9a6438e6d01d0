package runthrough.study.cause;

import java.util.Optional;
import runthrough.handcalc.Limit;

/** Why a coil change did not run through: what would have let it, in the order in which it is tried. */
public enum Cause {
    /** Entry and process are one strip: every coil change stops it. */
    PRACTICE("entry and process are one strip", Optional.empty()),
    /** Without the waiting for preparation it would have run through. */
    WAITING_FOR_PREPARATION("waiting for preparation", Optional.of(Limit.PREPARATION)),
    /** Without the waiting for people it would have run through. */
    WAITING_FOR_PEOPLE("waiting for people", Optional.empty()),
    /** From a full accumulator it would have run through. */
    ACCUMULATOR_NOT_FULL("accumulator not full", Optional.of(Limit.REFILL)),
    /** The joint took no more than a full accumulator bears: a faster coil, an earlier stop. */
    NOT_THE_JOINT("not the joint", Optional.empty()),
    /** The joint was made again. */
    JOINT_MADE_AGAIN("joint made again", Optional.of(Limit.CAPACITY)),
    /** An element that is not always done was done. */
    OCCASIONAL_ELEMENT("occasional element", Optional.of(Limit.CAPACITY)),
    /** An element took longer than it does half of the time. */
    ELEMENT_TOOK_LONG("element took long", Optional.of(Limit.CAPACITY)),
    /** Waiting for preparation and for people together. */
    BOTH_WAITS("both waits", Optional.of(Limit.PREPARATION)),
    /** Only all of these together. */
    SEVERAL_TOGETHER("several together", Optional.of(Limit.CAPACITY)),
    /** A usual joint takes longer than a full accumulator bears. */
    USUAL_JOINT_TOO_LONG("usual joint too long", Optional.of(Limit.CAPACITY));

    private final String words;
    private final Optional<Limit> limit;

    Cause(String words, Optional<Limit> limit) {
        this.words = words;
        this.limit = limit;
    }

    /** In words. */
    public String words() {
        return words;
    }

    /** The limit of the hand calculation that it shows; empty where that knows none. */
    public Optional<Limit> limit() {
        return limit;
    }
}
