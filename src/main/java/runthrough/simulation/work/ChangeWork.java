package runthrough.simulation.work;

import runthrough.plant.Line;
import runthrough.simulation.account.Recorder;
import runthrough.simulation.calendar.EventCalendar;

/**
 * The people's side of a coil change: who prepares which coil when, and the work on the standing strip.
 *
 * <p>Coil 1 runs at time 0. Preparing coil j may begin when the tail of coil j - U has left its uncoiler and coil j - 1 is
 * prepared. A crew of one begins the tail work before any preparation, finishes a preparation once begun, and with the strip
 * standing prepares only the coil that the joint waits for.
 *
 * <p>Rules CHANGE-2, CHANGE-6, CHANGE-7, CHANGE-9, CHANGE-11, CREW-1, CREW-2, CREW-3, CREW-4.
 */
public final class ChangeWork {
    private final Joint joint;
    private final EventCalendar calendar;
    private final Runnable onRelease;
    private final int uncoilers;
    private final boolean single;

    private final WorkSequence prepare;
    private final WorkSequence redoPrepare;
    private final WorkSequence tail;
    private final WorkSequence join;

    private int running = 1;
    private int prepared = 1;
    private int lastGone;
    private boolean preparing;
    private boolean standing;
    private boolean tailWaitsForCrew;
    private boolean joinWaitsForCoil;
    private double waitingSince;
    private double waited;

    /**
     * The work of {@code line}.
     *
     * @param lists what there is to do
     * @param joint made by it
     * @param calendar of the run
     * @param recorder shown each element that is done
     * @param onRelease called when the joint is good (T2)
     */
    public ChangeWork(
            Line line, WorkLists lists, Joint joint, EventCalendar calendar, Recorder recorder, Runnable onRelease) {
        this.joint = joint;
        this.calendar = calendar;
        this.onRelease = onRelease;
        uncoilers = line.entry().uncoilers();
        single = line.change().crew() == 1;
        prepare = new WorkSequence(lists.prepare(), calendar, recorder, this::coilPrepared);
        redoPrepare = new WorkSequence(lists.prepare(), calendar, recorder, this::beginTail);
        tail = new WorkSequence(lists.tail(), calendar, recorder, this::tailDone);
        join = new WorkSequence(lists.join(), calendar, recorder, this::joinDone);
    }

    /** Number of the running coil, from 1; also that of the coil change that ends it. */
    public int runningCoil() {
        return running;
    }

    /** At time 0 the preparation of the coils on the other uncoilers may begin. */
    public void begin() {
        prepareNext();
    }

    /** The running coil's tail has left its uncoiler. */
    public void tailLeftUncoiler() {
        lastGone = running;
        prepareNext();
    }

    /** The tail has stopped in the joiner (T1). */
    public void tailStopped() {
        standing = true;
        joint.begin(running);
        waited = 0;
        waitingSince = calendar.now();
        lastGone = running;
        tailWaitsForCrew = single && preparing;
        if (!tailWaitsForCrew) {
            beginTail();
        }
        prepareNext();
    }

    private void prepareNext() {
        int next = prepared + 1;
        boolean crewIsFree = !single || !standing || (joinWaitsForCoil && next == running + 1);
        if (!preparing && next <= lastGone + uncoilers && crewIsFree) {
            preparing = true;
            prepare.begin(next - 1, 1);
        }
    }

    private void coilPrepared() {
        preparing = false;
        prepared++;
        if (tailWaitsForCrew) {
            tailWaitsForCrew = false;
            beginTail();
        } else if (joinWaitsForCoil && prepared > running) {
            beginJoin();
        }
        prepareNext();
    }

    private void beginTail() {
        endWait();
        tail.begin(running, joint.pass());
    }

    private void tailDone() {
        waitingSince = calendar.now();
        if (prepared > running) {
            beginJoin();
        } else {
            joinWaitsForCoil = true;
            prepareNext();
        }
    }

    private void beginJoin() {
        joinWaitsForCoil = false;
        endWait();
        join.begin(running, joint.pass());
    }

    private void endWait() {
        if (joint.pass() == 1) {
            waited += calendar.now() - waitingSince;
        }
    }

    private void joinDone() {
        if (joint.isGoodNow()) {
            standing = false;
            running++;
            onRelease.run();
            prepareNext();
        } else {
            redoPrepare.begin(running, joint.pass());
        }
    }

    /** How long the last joint waited for preparation (s). */
    public double waited() {
        return waited;
    }
}
