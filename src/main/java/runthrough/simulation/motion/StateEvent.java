package runthrough.simulation.motion;

import runthrough.simulation.calendar.EventOrder;

/**
 * Something that the motion brings about: a condition that is watched, and what follows when it holds. Subclasses are final
 * and held as what they are, so that the compiler sees through the calls, which are made after every event.
 */
abstract class StateEvent {
    /** Its place among simultaneous events. */
    final EventOrder order;

    StateEvent(EventOrder order) {
        this.order = order;
    }

    /** Seconds until the condition holds if no plan changes before, {@code >= 0}; {@link Kinematics#NEVER} if it does not. */
    abstract double timeTo();

    /** What follows; the line is up to date, and plans are made anew afterwards. */
    abstract void happen();
}
