package runthrough.study;

/** Whether the share of coil changes run through reaches the target. */
public enum TargetStatus {
    /** The whole 95 % interval is at or above the target; or nothing is random and the share is. */
    MEETS,
    /** The whole 95 % interval is below the target; or nothing is random and the share is. */
    MISSES,
    /** The interval holds the target: this run cannot tell. */
    UNDECIDED
}
