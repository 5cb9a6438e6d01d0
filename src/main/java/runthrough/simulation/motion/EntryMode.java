package runthrough.simulation.motion;

import runthrough.simulation.records.Trace.EntryState;

/** What an entry section that feeds an accumulator is doing; settling has five forms. */
enum EntryMode {
    /** Ramps to, and holds, the greatest speed allowed. Rule ENTRY-3. */
    FILLING(EntryState.FILLING),
    /** Ramps to v*, so as to arrive with x = C exactly, and holds it until the process has it too. Rule ENTRY-4. */
    ARRIVING_FULL(EntryState.SETTLING),
    /** The same where the level comes to rest above C. Rule ENTRY-5. */
    ARRIVING_ABOVE(EntryState.SETTLING),
    /** Ramps to the process's present speed, to follow it from there. Rule ENTRY-6. */
    HEADING_FOR_PROCESS(EntryState.SETTLING),
    /** Has the process's speed and shares its ramp; not matched before both have v*. Rule ENTRY-6. */
    FOLLOWING(EntryState.SETTLING),
    /** Above C and slower than v*: holds its speed until the excess is used up. Rule ENTRY-7. */
    HOLDING(EntryState.SETTLING),
    /** One speed with the process. Rule ENTRY-10. */
    MATCHED(EntryState.MATCHED),
    /** Brings the tail to rest. Rule ENTRY-18. */
    RUNNING_OUT(EntryState.RUNNING_OUT),
    /** Stands for the joint. Rule ENTRY-20. */
    STANDING(EntryState.STANDING);

    /** What a trace calls it. */
    final EntryState traced;

    EntryMode(EntryState traced) {
        this.traced = traced;
    }
}
