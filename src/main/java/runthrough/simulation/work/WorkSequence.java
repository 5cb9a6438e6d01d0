package runthrough.simulation.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import runthrough.simulation.account.Recorder;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.PutDown;

/**
 * One list of work elements, done one after another. It knows what comes next and how long it takes; {@link ChangeWork}, which
 * has the people, says when it begins.
 *
 * <p>Rules CHANGE-1, CREW-5, ORDER-3.
 */
sealed class WorkSequence permits JointSequence {
    /** An element with less time left than this (s) is finished, not put down. */
    private static final double NEARLY_DONE = 1e-9;

    private enum State {
        /** There is no list to do. */
        IDLE,
        /** The next element has yet to begin. */
        WAITING,
        UNDER_WAY,
        /** Begun, and left for the joint. */
        PUT_DOWN,
        /** The whole list is done. */
        DONE
    }

    private final WorkQueue queue;
    private final Recorder recorder;
    private final EventCalendar calendar;
    private final EventCalendar.Timer timer;
    private final List<PutDown> putDown = new ArrayList<>();

    private State state = State.IDLE;
    private int change;
    private int pass;
    private int element;
    /** What is still to come off this pass (s), see {@link runthrough.plant.CoilChange#withJoinShorterBy}. */
    private double toSave;

    private double begun;
    private double left;
    private double leftSince;
    /** When the element under way ends, where the calendar does not know. */
    private double due;

    /** Does the elements of {@code queue}; {@code whenElementEnds} is called after each. */
    WorkSequence(WorkQueue queue, EventCalendar calendar, Recorder recorder, Runnable whenElementEnds) {
        this.queue = queue;
        this.calendar = calendar;
        this.recorder = recorder;
        timer = calendar.timer(queue.list().name().toLowerCase(Locale.ROOT), EventOrder.TIMER, () -> {
            endElement();
            whenElementEnds.run();
        });
    }

    /**
     * Takes up the list for coil change {@code onChange}, pass {@code ofJoint} from 1; passes after the first do only what is
     * marked for redoing.
     */
    void begin(int onChange, int ofJoint) {
        change = onChange;
        pass = ofJoint;
        element = -1;
        toSave = queue.shorterBy();
        next();
    }

    /** Forgets the list, which is done. */
    void clear() {
        state = State.IDLE;
    }

    /** Goes on to the next element that is done. */
    final void next() {
        do {
            element++;
        } while (element < queue.size() && !queue.isDone(element, change, pass));
        state = element < queue.size() ? State.WAITING : State.DONE;
    }

    /** Begins the next element, or takes up again the one that was put down. */
    void proceed() {
        double now = calendar.now();
        if (state == State.WAITING) {
            left = takes();
            begun = now;
        } else if (recorder.keepsWork()) {
            putDown.add(new PutDown(leftSince, now));
        }
        state = State.UNDER_WAY;
        timer.start(left);
    }

    /** Takes the end of the element under way out of the calendar: {@link #goOnUntil} sees to it. */
    void detach() {
        if (state == State.UNDER_WAY) {
            due = timer.dueAt();
            timer.stopIfPending();
        }
    }

    /** Puts it back. */
    void attach() {
        if (state == State.UNDER_WAY) {
            timer.startAt(due);
        }
    }

    /**
     * Goes on with nobody in its way, detached, from {@code from} until {@code until} (s), each element beginning when the one
     * before it ends. Gives when the last ended that did by then, else {@code from}.
     */
    double goOnUntil(double from, double until) {
        double time = from;
        while (state == State.WAITING || state == State.UNDER_WAY) {
            if (state == State.WAITING) {
                due = time + queue.draw(element, change, pass);
                state = State.UNDER_WAY;
            }
            if (due > until) {
                return time;
            }
            time = due;
            next();
        }
        return time;
    }

    /** How long the element that begins takes (s). */
    double takes() {
        return shortened(queue.draw(element, change, pass));
    }

    /** What is left (s) of an element that takes {@code whole} (s) when the pass is shortened; the rest goes on to the next. */
    private double shortened(double whole) {
        double rest = Math.max(0, whole - toSave);
        toSave = Math.max(0, toSave - whole);
        return rest;
    }

    /** Leaves the element under way for the joint; where next to nothing is left of it, it is finished. */
    void putDown() {
        left = timer.dueAt() - calendar.now();
        timer.stopIfPending();
        if (left < NEARLY_DONE) {
            endElement();
        } else {
            state = State.PUT_DOWN;
            leftSince = calendar.now();
        }
    }

    private void endElement() {
        if (recorder.keepsWork()) {
            recorder.work(new WorkRecord(change, pass, queue.list(), element, begun, calendar.now(), putDown));
            putDown.clear();
        }
        next();
    }

    boolean isIdle() {
        return state == State.IDLE;
    }

    boolean isUnderWay() {
        return state == State.UNDER_WAY;
    }

    /** Whether an element has yet to begin. */
    boolean isWaiting() {
        return state == State.WAITING;
    }

    boolean isPutDown() {
        return state == State.PUT_DOWN;
    }

    boolean isDone() {
        return state == State.DONE;
    }

    /** Number of the coil change that the list is done for. */
    int change() {
        return change;
    }

    /** Place in the list of the element under way or next, from 0. */
    int element() {
        return element;
    }

    /** People that the element under way or next takes. */
    int people() {
        return queue.people(element);
    }

    /** Whether the element under way or next may be put down. */
    boolean mayBePutDown() {
        return queue.mayBePutDown(element);
    }

    /** Mean time (s) of the next element where it is done. */
    double meanTime() {
        return queue.meanTime(element, change);
    }
}
