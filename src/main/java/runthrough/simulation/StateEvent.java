package runthrough.simulation;

/**
 * What may happen to the strip next. At one instant the lower order goes first; timers (order 3) and own stops falling due
 * (order 4) stand in the calendar by themselves.
 */
enum StateEvent {
    PROCESS_RAMP(1),
    ENTRY_RAMP(1),
    ENTRY_MEETS_PROCESS(1),
    CREEP_ZONE(2),
    CREEP_ENDS(2),
    NEW_RATED_SPEED(5),
    CHANGE_STARTS(6),
    SETTLES(7),
    STARVES(8),
    SLOWS(9),
    RESUMES(10),
    RESTARTS(11),
    TAIL_LEAVES_UNCOILER(12);

    /** Order of a timer among simultaneous events. */
    static final int TIMER_ORDER = 3;

    /** Order of an own stop falling due. */
    static final int OWN_STOP_ORDER = 4;

    /** Order of the end of a run of given time: after all else. */
    static final int END_ORDER = 13;

    final int order;

    StateEvent(int order) {
        this.order = order;
    }
}
