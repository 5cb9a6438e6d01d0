package runthrough.simulation.motion;

import runthrough.simulation.records.Trace.EntryState;

/**
 * What an entry section that feeds an accumulator is doing. Settling has the specification's four forms, of which the one "to v*"
 * is two here: what arrives full is set to C exactly.
 */
enum EntryMode {
    /** Ramps to, and holds, the greatest speed allowed. */
    FILLING(EntryState.FILLING),
    /** Ramps to v*, so as to arrive with x = C exactly, and holds it until the process has it too. */
    ARRIVING_FULL(EntryState.SETTLING),
    /** The same where the level comes to rest above C. */
    ARRIVING_ABOVE(EntryState.SETTLING),
    /** Ramps to the process's present speed, to follow it from there. */
    HEADING_FOR_PROCESS(EntryState.SETTLING),
    /** Has the process's speed and shares its ramp; not matched before both have v*. */
    FOLLOWING(EntryState.SETTLING),
    /** Above C and slower than v*: holds its speed until the excess is used up. */
    HOLDING(EntryState.SETTLING),
    /** One speed with the process. */
    MATCHED(EntryState.MATCHED),
    /** Brings the tail to rest. */
    RUNNING_OUT(EntryState.RUNNING_OUT),
    /** Stands for the joint. */
    STANDING(EntryState.STANDING);

    /** What a trace calls it. */
    final EntryState traced;

    EntryMode(EntryState traced) {
        this.traced = traced;
    }
}
