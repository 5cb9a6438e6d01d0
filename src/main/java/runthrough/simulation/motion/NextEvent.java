package runthrough.simulation.motion;

import org.jspecify.annotations.Nullable;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;

/**
 * The first of the state events that may come next; at one time the one of lower order, then the first offered.
 */
final class NextEvent {
    private final EventCalendar calendar;
    private final EventCalendar.Timer timer;
    private double delay;
    private @Nullable StateEvent event;

    NextEvent(EventCalendar calendar) {
        this.calendar = calendar;
        timer = calendar.step("motion", EventOrder.RAMP_ENDS, this::happen);
    }

    /** Forgets what was offered, and takes what was scheduled out of the calendar. */
    void clear() {
        delay = Kinematics.NEVER;
        event = null;
        timer.stopIfPending();
    }

    /** Takes {@code candidate} if it comes sooner than what was offered before. */
    void offer(StateEvent candidate) {
        double time = candidate.timeTo();
        if (time < delay) {
            delay = time;
            event = candidate;
        } else if (!(time > delay)) {
            offerAtTheSame(candidate, time);
        }
    }

    /** Not sooner and not later than what was offered before. */
    private void offerAtTheSame(StateEvent candidate, double time) {
        if (Double.isNaN(time)) {
            throw calendar.error("the time until " + candidate.order + " is not a number");
        }
        if (event != null && candidate.order.compareTo(event.order) < 0) {
            event = candidate;
        }
    }

    /** Seconds until it comes; {@link Kinematics#NEVER} if nothing does. */
    double delay() {
        return delay;
    }

    /** Whether it is the start of a coil change (T0). */
    boolean isChangeStart() {
        return event != null && event.order == EventOrder.CHANGE_STARTS;
    }

    /** Puts it into the calendar, if there is one. */
    void schedule() {
        if (event != null) {
            timer.start(delay, event.order);
        }
    }

    /** What follows when it comes. */
    void happen() {
        if (event != null) {
            event.happen();
        }
    }
}
