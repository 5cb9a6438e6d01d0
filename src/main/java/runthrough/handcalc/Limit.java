package runthrough.handcalc;

/** What may keep a line from running through its coil changes. */
public enum Limit {
    /** The accumulator holds too little for the joint cycle time. */
    CAPACITY,
    /** The accumulator is not full again when the next coil change begins. */
    REFILL,
    /** The next coil is not prepared in time. */
    PREPARATION
}
