package runthrough.simulation;

import runthrough.plant.Joint;

/** Does the elements of one list one after another, then says that it is done. */
final class WorkSequence {
    private final WorkQueue queue;
    private final Recorder recorder;
    private final EventCalendar calendar;
    private final EventCalendar.Timer timer;
    private final Runnable whenDone;
    private int change;
    private int pass;
    private Joint joint = Joint.alike(1, 1);
    private int next;
    private double begun;

    WorkSequence(WorkQueue queue, EventCalendar calendar, Recorder recorder, Runnable whenDone) {
        this.queue = queue;
        this.calendar = calendar;
        this.recorder = recorder;
        this.whenDone = whenDone;
        timer = calendar.timer(
                queue.list().name().toLowerCase(java.util.Locale.ROOT), StateEvent.TIMER_ORDER, this::elementDone);
    }

    /**
     * Begins the list for coil change {@code onChange}, pass {@code ofJoint} from 1; passes after the first do only what is
     * marked for redoing. An empty list is done at once.
     */
    void begin(int onChange, int ofJoint, Joint ofCoils) {
        change = onChange;
        pass = ofJoint;
        joint = ofCoils;
        next = 0;
        proceed();
    }

    private void elementDone() {
        recorder.work(change, pass, queue.list(), next - 1, begun, calendar.now());
        proceed();
    }

    private void proceed() {
        while (next < queue.size()) {
            int element = next++;
            if (queue.isDone(element, change, pass, joint)) {
                begun = calendar.now();
                timer.start(queue.draw(element, change, pass, joint));
                return;
            }
        }
        whenDone.run();
    }
}
