package runthrough.simulation;

/** The soonest of the events that may come next; at one time the one of lower order, then the first offered. */
final class NextEvent {
    private double delay;
    private StateEvent event = StateEvent.PROCESS_RAMP;

    void clear() {
        delay = Kinematics.NEVER;
    }

    /** An event that would come {@code time} seconds from now, {@code >= 0} or never. */
    void offer(StateEvent candidate, double time) {
        if (time < delay || (time == delay && candidate.order < event.order)) {
            delay = time;
            event = candidate;
        }
    }

    boolean exists() {
        return delay < Kinematics.NEVER;
    }

    double delay() {
        return delay;
    }

    StateEvent event() {
        return event;
    }
}
