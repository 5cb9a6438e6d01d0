package runthrough.study;

/**
 * What a coil change that did not run through is attributed to: the first of these whose removal would have let it through. The
 * strip that it needed with the process kept at its rated speed is worked out from its own times, see {@link runthrough.study.margin.StripMargin}.
 */
public enum Cause {
    /** Entry and process are one strip: every coil change stops it. */
    PRACTICE,
    /** The joint waited for the next coil to be prepared; without the wait the strip at its start would have lasted. */
    PREPARATION,
    /** The accumulator was not full when it began; full, and without any wait, the strip would have lasted. */
    REFILL,
    /** A full accumulator would not have lasted through the joint, even without any wait. */
    CAPACITY
}
