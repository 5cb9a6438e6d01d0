package runthrough.simulation.calendar;

/**
 * What goes first of the events at one instant: these kinds in their order, and of one kind the event that was set first.
 * After each event plans are made anew, the process's before the entry's, so that a later event sees what an earlier one did.
 *
 * <p>Rules ORDER-1, ORDER-2, ORDER-3, ORDER-4, ORDER-5, ORDER-6, ORDER-7, ORDER-8, ORDER-9, ORDER-10, ORDER-11, ORDER-12,
 * ORDER-13: each constant is the rule of its place.
 */
public enum EventOrder {
    /** 1: a ramp reaches its target, or the entry the speed of the process. */
    RAMP_ENDS,
    /** 2: creep marks. Also the tail stops and the entry is settled here: both follow from the end of a ramp, at once. */
    MARK_REACHED,
    /** 3: timers; the ends of shifts and breaks before the others. */
    CREW_CHANGES,
    /** 3: timers (work elements, restart delay, end of downtime), in the order in which they were set. */
    TIMER,
    /** 4: process downtime falls due. */
    DOWNTIME_DUE,
    /** 5: a joint reaches the process section: new rated speed. */
    JOINT_REACHES_PROCESS,
    /** 5: a joint passage begins or ends. */
    JOINT_PASSES,
    /** 5: a joint breaks in the process section. */
    JOINT_BREAKS,
    /** 6: a coil change starts (T0). */
    CHANGE_STARTS,
    /** 7: the settled level reaches the capacity: X = C. */
    SETTLES,
    /** 8: the process must stop on a low level. */
    STARVES,
    /** 9: the process slows on a low level. */
    SLOWS,
    /** 10: a slowed process takes up full speed. */
    RESUMES,
    /** 11: a starved process may restart. */
    RESTARTS,
    /** 12: the tail has left its uncoiler. */
    TAIL_LEAVES_UNCOILER,
    /** 13: end of a run of given time. */
    RUN_ENDS;

    /** Its priority: its place among these constants, from 1, of which several may belong to one rule. */
    @SuppressWarnings("EnumOrdinal") // the order in which the constants stand is what they say
    public int place() {
        return ordinal() + 1;
    }
}
