package runthrough.simulation;

import java.util.List;
import org.jspecify.annotations.Nullable;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Joint;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.simulation.WorkRecord.WorkList;

/**
 * The people's side of a coil change: who prepares which coil when, the work on the standing strip, rejects.
 *
 * <p>Coil 1 runs at time 0. Preparing coil j may begin when the tail of coil j - U has left its uncoiler and coil j - 1 is
 * prepared. A crew of one begins the tail work before any preparation, finishes a preparation once begun, and with the strip
 * standing prepares only the coil that the joint waits for.
 */
final class ChangeWork {
    private final CoilFeed feed;
    private final EventCalendar calendar;
    private final RunStatistics statistics;
    private final Runnable onRelease;
    private final int uncoilers;
    private final boolean single;
    private final Reject reject;
    /** Present where chance decides on rejects. */
    private final @Nullable SourceDraws rejectDraws;

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
    private int pass;
    private double waitingSince;
    private double waited;

    ChangeWork(
            Line line,
            CoilFeed feed,
            EventCalendar calendar,
            RunStatistics statistics,
            Recorder recorder,
            Streams streams,
            Runnable onRelease) {
        this.feed = feed;
        this.calendar = calendar;
        this.statistics = statistics;
        this.onRelease = onRelease;
        CoilChange change = line.change();
        boolean rethreads = line.practice() == Practice.RETHREAD;
        uncoilers = line.entry().uncoilers();
        single = change.crew() == 1;
        reject = rethreads ? new Reject.Never() : change.reject();
        rejectDraws = reject instanceof Reject.Chance ? streams.draws(Source.REJECT) : null;
        List<RowDraws> rows = RowDraws.of(change, streams, uncoilers);
        WorkQueue prepareList = new WorkQueue(WorkList.PREPARE, change.prepare(), streams, rows);
        List<WorkElement> joinWork = rethreads ? List.of(rethreading(change.rethread())) : change.join();
        prepare = new WorkSequence(prepareList, calendar, recorder, this::coilPrepared);
        redoPrepare = new WorkSequence(prepareList, calendar, recorder, this::beginTail);
        tail = new WorkSequence(
                new WorkQueue(WorkList.TAIL, rethreads ? List.of() : change.tail(), streams, rows),
                calendar,
                recorder,
                this::tailDone);
        join = new WorkSequence(
                new WorkQueue(WorkList.JOIN, joinWork, streams, rows), calendar, recorder, this::joinDone);
    }

    private static WorkElement rethreading(Distribution time) {
        return new WorkElement("rethread", new WorkTime.Timed(time), new Occurrence.Always(), false);
    }

    /** Number of the running coil, from 1; also that of the coil change that ends it. */
    int runningCoil() {
        return running;
    }

    /** Whether the running coil's tail has yet to leave its uncoiler. */
    boolean tailIsOnUncoiler() {
        return lastGone < running;
    }

    /** At time 0 the preparation of the coils on the other uncoilers may begin. */
    void begin() {
        prepareNext();
    }

    /** The running coil's tail has left its uncoiler. */
    void tailLeftUncoiler() {
        lastGone = running;
        prepareNext();
    }

    /** The tail has stopped in the joiner (T1). */
    void tailStopped() {
        standing = true;
        pass = 1;
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
            prepare.begin(next - 1, 1, joint(next - 1));
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
        if (pass == 1) {
            waited += calendar.now() - waitingSince;
        }
        tail.begin(running, pass, joint(running));
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
        if (pass == 1) {
            waited += calendar.now() - waitingSince;
        }
        join.begin(running, pass, joint(running));
    }

    private void joinDone() {
        statistics.jointMade(feed.coil(running), feed.coil(running + 1));
        if (isRejected()) {
            pass++;
            redoPrepare.begin(running, pass, joint(running));
        } else {
            standing = false;
            running++;
            onRelease.run();
            prepareNext();
        }
    }

    private boolean isRejected() {
        if (reject instanceof Reject.Chance chance && rejectDraws != null) {
            return rejectDraws.next(running, pass) < chance.p();
        }
        return reject instanceof Reject.Every every && pass == 1 && running % every.n() == 0;
    }

    /** Between coil {@code number} and the one that follows it. */
    private Joint joint(int number) {
        return Joint.between(feed.coil(number), feed.coil(number + 1));
    }

    /** How long the last joint waited for preparation (s). */
    double waited() {
        return waited;
    }

    /** How often the last joint was made, from 1. */
    int passes() {
        return pass;
    }
}
