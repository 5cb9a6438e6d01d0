package runthrough.simulation.motion;

import org.jspecify.annotations.Nullable;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.simulation.account.RunStatistics;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.random.RandomNumbers;

/**
 * Everything that moves the strip of one run: makes the plans of process and entry, and watches for what comes next.
 *
 * <p>Rules TIME-1, PROC-2, ORDER-14.
 */
public final class LineMotion {
    private final Line line;
    private final LineState state;
    private final EventCalendar calendar;
    private final RunStatistics statistics;
    private final CoilChangeEvents changes;
    private final NextEvent next;
    private final ProcessControl process;
    private final EntrySection entry;
    private final LevelWatch levels;
    private final JointTracker joints;
    private final UncoilerWatch uncoiler;
    private final @Nullable OrdinaryCourse ordinary;
    /** Whether joints on their way, or a tail on its way, may bring something about. */
    private final boolean watches;

    private boolean wasMatched = true;

    /**
     * The motion of {@code state}.
     *
     * @param setting what it is made for
     * @param state moved by this
     * @param calendar of the run
     * @param statistics takes what happens
     * @param numbers random numbers of the run
     * @param changes takes T0 and T1
     */
    public LineMotion(
            MotionSetting setting,
            LineState state,
            EventCalendar calendar,
            RunStatistics statistics,
            RandomNumbers numbers,
            CoilChangeEvents changes) {
        line = setting.line();
        this.state = state;
        this.calendar = calendar;
        this.statistics = statistics;
        this.changes = changes;
        next = new NextEvent(calendar);
        process = new ProcessControl(line, state, calendar, statistics, numbers);
        TailWatch tail = new TailWatch(new RunOut(line.tailDeceleration(), line.creep()), state, changes);
        if (state.hasAccumulator) {
            AccumulatedEntry accumulated = new AccumulatedEntry(line, state, tail);
            ordinary = new OrdinaryCourse(line, this, state, accumulated, tail.runOut());
            entry = accumulated;
        } else {
            ordinary = null;
            entry = new OneStripEntry(line, state, process, tail);
        }
        levels = new LevelWatch(line, state, process);
        joints = new JointTracker(line, setting.coilsDiffer(), state, statistics, process.jointBreaks());
        uncoiler = new UncoilerWatch(line, state, changes);
        watches = joints.mayAct() || uncoiler.mayAct();
    }

    /** Begins at time 0 with {@code usableLength} (m) of the first coil, at its rated speed. */
    public void begin(Coil first, double usableLength) {
        state.remaining = usableLength;
        statistics.weigh(first.massPerMetre());
        process.begin(line.ratedSpeed(first));
        entry.begin();
    }

    /** The coil change starts (T0). */
    public void runOut() {
        state.released = false;
        entry.runOut();
    }

    /** The joint before {@code coil} is released (T2), with {@code usableLength} (m) to run. */
    public void release(Coil coil, double usableLength) {
        state.released = true;
        state.remaining = usableLength;
        joints.release(coil);
        uncoiler.release();
        entry.release();
    }

    /** Makes all plans anew, and schedules what comes next. */
    public void plan() {
        planEnds();
        while (stopTail()) {
            planEnds();
        }
        noteMatching();
        next.clear();
        process.offerTo(next);
        entry.offerTo(next);
        if (state.hasAccumulator) {
            levels.offerTo(next);
        }
        joints.offerTo(next);
        uncoiler.offerTo(next);
        next.schedule();
    }

    /** How far {@link #goOn} came. */
    public enum Reached {
        /** T0, which has yet to be taken. */
        CHANGE_STARTS,
        /** T1, which has yet to be taken. */
        TAIL_AT_REST,
        /** Something may be next that has to be watched for. */
        SOMETHING_ELSE
    }

    /**
     * Goes on from one event of the strip to the next while the course is an ordinary one: the process keeps its rated speed, the
     * level stays above all that is watched for, and nothing in the calendar comes before.
     */
    public Reached goOn() {
        Reached reached = ordinary == null ? Reached.SOMETHING_ELSE : ordinary.goOn();
        if (reached != Reached.SOMETHING_ELSE) {
            return reached;
        }
        while (isOrdinary()) {
            entry.plan();
            noteMatching();
            if (entry.isTailAtRest()) {
                return Reached.TAIL_AT_REST;
            }
            next.clear();
            entry.offerTo(next);
            joints.offerTo(next);
            uncoiler.offerTo(next);
            if (!mayPass(next.delay())) {
                break;
            }
            calendar.goOnAt(calendar.now() + next.delay(), "motion");
            if (next.isChangeStart()) {
                return Reached.CHANGE_STARTS;
            }
            next.happen();
        }
        return Reached.SOMETHING_ELSE;
    }

    /** Whether the strip has an ordinary course at present. */
    boolean isOrdinary() {
        return state.isAtRated() && !statistics.mayLose();
    }

    /** Goes on for {@code delay} seconds, where nothing else comes before; whether it did. */
    boolean passes(double delay) {
        if (watches) {
            next.clear();
            joints.offerTo(next);
            uncoiler.offerTo(next);
            if (!(delay < next.delay())) {
                return false;
            }
        }
        if (!mayPass(delay)) {
            return false;
        }
        calendar.goOnAt(calendar.now() + delay, "motion");
        return true;
    }

    private boolean mayPass(double delay) {
        return calendar.now() + delay < calendar.nextDue() && levels.staysAbove(delay);
    }

    /** Takes T1, and goes on until {@code time} (s), where the course stays ordinary until then; otherwise does nothing. */
    public boolean standsUntil(double time) {
        double delay = time - calendar.now();
        next.clear();
        joints.offerTo(next);
        if (!(delay < next.delay()) || !mayPass(delay)) {
            return false;
        }
        stopTail();
        calendar.goOnAt(time, "joint");
        return true;
    }

    private boolean stopTail() {
        if (!entry.tailHasStopped()) {
            return false;
        }
        uncoiler.tailStopped();
        changes.tailStops();
        return true;
    }

    void noteMatching() {
        boolean isMatched = entry.isMatched();
        if (isMatched) {
            statistics.matched(calendar.now());
            if (!wasMatched) {
                changes.entryMatched();
            }
        }
        wasMatched = isMatched;
    }

    /**
     * How long (s) the running coil lasts at the speed that the process heads for, less what the accumulator would still take;
     * endless where the process heads for rest, and without an accumulator.
     */
    public double coilLasts() {
        if (!state.hasAccumulator || state.target() == 0) {
            return Double.POSITIVE_INFINITY;
        }
        return (state.remaining - Math.max(0, state.capacity - state.level)) / state.target();
    }

    private void planEnds() {
        process.plan(entry);
        entry.plan();
    }
}
