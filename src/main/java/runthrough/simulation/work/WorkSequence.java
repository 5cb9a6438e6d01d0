package runthrough.simulation.work;

import java.util.Locale;
import runthrough.simulation.account.Recorder;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.records.WorkRecord;

/**
 * Does the elements of one list one after another, then says that it is done.
 *
 * <p>Rule CHANGE-1.
 */
final class WorkSequence {
    private final WorkQueue queue;
    private final Recorder recorder;
    private final EventCalendar calendar;
    private final EventCalendar.Timer timer;
    private final Runnable whenDone;
    private int change;
    private int pass;
    private int next;
    private double begun;

    WorkSequence(WorkQueue queue, EventCalendar calendar, Recorder recorder, Runnable whenDone) {
        this.queue = queue;
        this.calendar = calendar;
        this.recorder = recorder;
        this.whenDone = whenDone;
        timer = calendar.timer(queue.list().name().toLowerCase(Locale.ROOT), EventOrder.TIMER, this::elementDone);
    }

    /**
     * Begins the list for coil change {@code onChange}, pass {@code ofJoint} from 1; passes after the first do only what is
     * marked for redoing. An empty list is done at once.
     */
    void begin(int onChange, int ofJoint) {
        change = onChange;
        pass = ofJoint;
        next = 0;
        proceed();
    }

    private void elementDone() {
        if (recorder.keepsWork()) {
            recorder.work(new WorkRecord(change, pass, queue.list(), next - 1, begun, calendar.now()));
        }
        proceed();
    }

    private void proceed() {
        while (next < queue.size()) {
            int element = next++;
            if (queue.isDone(element, change, pass)) {
                begun = calendar.now();
                timer.start(queue.draw(element, change, pass));
                return;
            }
        }
        whenDone.run();
    }
}
