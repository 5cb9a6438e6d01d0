package runthrough.simulation;

import java.util.Optional;
import java.util.function.Supplier;
import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.simulation.account.Recorder;
import runthrough.simulation.account.RunStatistics;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.calendar.Watched;
import runthrough.simulation.motion.CoilChangeEvents;
import runthrough.simulation.motion.LineMotion;
import runthrough.simulation.motion.LineState;
import runthrough.simulation.motion.MotionSetting;
import runthrough.simulation.random.CoilFeed;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.SimulationException;
import runthrough.simulation.records.WorkDone;
import runthrough.simulation.work.ChangeWork;
import runthrough.simulation.work.JointPasses;
import runthrough.simulation.work.WorkLists;

/**
 * One replication: holds the clock, the state of the line and everybody who acts on it, and leads each coil change through
 * T0, T1 and T2.
 *
 * <p>Rules TIME-1, TIME-2, TIME-3, TIME-4, NUM-5.
 */
final class LineRun implements Watched, CoilChangeEvents, ChangeWork.Events {
    /** Relative; a coil of exactly the length needed is long enough. */
    private static final double ROUNDING = 1e-12;

    /** A property of the virtual machine with which tests have every event taken, which gives the same to the last bit. */
    private static final String EVENT_BY_EVENT = "runthrough.event-by-event";

    private final Line line;
    private final RunPlan plan;
    private final EventCalendar calendar = new EventCalendar(this);
    private final Recorder recorder;
    private final CoilFeed feed;
    private final LineState state;
    private final RunStatistics statistics;
    private final LineMotion motion;
    private final JointPasses joint;
    private final ChangeWork work;

    private final Supplier<Optional<WorkDone>> workDone = this::workOfLatestChange;

    private final boolean ordinaryAtOnce;

    private double upToDate;
    private boolean finished;

    LineRun(MotionSetting setting, RunPlan plan, RandomNumbers numbers, Detail detail, Optional<ChangeEye> eye) {
        line = setting.line();
        this.plan = plan;
        recorder = new Recorder(detail);
        // Elements of work and breakpoints are recorded event by event.
        ordinaryAtOnce = !detail.keepsWork() && !line.practice().isOneStrip() && !Boolean.getBoolean(EVENT_BY_EVENT);
        feed = new CoilFeed(line, numbers);
        state = new LineState(line);
        statistics = new RunStatistics(line, state, detail, eye);
        motion = new LineMotion(setting, state, calendar, statistics, numbers, this);
        joint = new JointPasses(line, feed, statistics, numbers);
        work = new ChangeWork(
                line, new WorkLists(line, feed, numbers), joint, calendar, recorder, this::coilLasts, this);
    }

    /** Runs from time 0 to the end of the plan, as replication {@code index}. */
    Replication run(int index) {
        begin();
        calendar.run();
        if (!finished) {
            throw calendar.error("nothing is left to happen");
        }
        return new Replication(
                index,
                statistics.totals(calendar.now()),
                statistics.changes(),
                recorder.work(),
                recorder.trace(state.capacity()));
    }

    private void begin() {
        motion.begin(feed.coil(1), firstUsableLength());
        statistics.beginTotals(0);
        work.begin();
        if (plan.extent() instanceof Extent.Time time) {
            calendar.step("end of run", EventOrder.RUN_ENDS, this::timeIsUp).start(time.duration());
        }
        replan();
    }

    /** Usable length (m) of the coil that is running at time 0, at speed: it must be enough to stop in. */
    private double firstUsableLength() {
        double usable = feed.usableLength(1);
        double needed = line.runOutLength(line.ratedSpeed(feed.coil(1)));
        if (usable < needed * (1 - ROUNDING)) {
            throw new SimulationException(feed.describe(1) + " has " + SimulationException.text(usable)
                    + " m of usable strip, too short to stop in, which takes " + SimulationException.text(needed)
                    + " m. Give longer coils or a faster stop");
        }
        return usable;
    }

    @Override
    public void catchUp() {
        double dt = calendar.now() - upToDate;
        if (dt > 0) {
            statistics.stretchAhead(dt);
            state.advance(dt);
            statistics.stretchPassed();
            upToDate = calendar.now();
        }
    }

    @Override
    public void replan() {
        if (finished) {
            return;
        }
        motion.plan();
        trace();
    }

    private void trace() {
        if (recorder.isTracing()) {
            recorder.point(calendar.now(), state);
        }
    }

    /** T0. Coil changes after it are taken without events as long as they are ordinary. */
    @Override
    public void changeStarts() {
        beginChange();
        if (finished || !mayGoOn()) {
            return;
        }
        work.takeOver();
        while (goesOn()) {
            // One event of an ordinary course after the other.
        }
        work.handBack();
    }

    private boolean mayGoOn() {
        return ordinaryAtOnce && work.isOrdinary();
    }

    private boolean goesOn() {
        switch (motion.goOn()) {
            case CHANGE_STARTS -> beginChange();
            case TAIL_AT_REST -> {
                if (!motion.standsUntil(work.jointEnds())) {
                    return false;
                }
                work.jointIsMade();
            }
            case SOMETHING_ELSE -> {
                return false;
            }
        }
        return !finished && work.isOrdinary();
    }

    private void beginChange() {
        int number = work.runningCoil();
        keepLatestChange();
        if (plan.extent() instanceof Extent.Changes wanted && number > wanted.changes()) {
            finish();
            return;
        }
        if (plan.leaveOut() > 0 && number == plan.leaveOut() + 1) {
            statistics.beginTotals(calendar.now());
        }
        statistics.changeBegins(calendar.now(), work.shift(), feed.kind(number), feed.kind(number + 1));
        work.changeStarts();
        motion.runOut();
    }

    /** T1. */
    @Override
    public void tailStops() {
        statistics.tailStopped(calendar.now());
        work.tailStopped();
    }

    /** T2. */
    @Override
    public void jointReleased() {
        catchUp();
        Coil coil = feed.coil(work.runningCoil());
        double usable = joint.usableLength();
        statistics.jointReleased(
                calendar.now(), work.waiting().forPreparation(), work.waiting().forPeople(), joint.pass());
        statistics.jointCutOut(feed.coil(work.runningCoil() - 1), coil);
        motion.release(coil, usable);
    }

    @Override
    public void afterRelease() {
        replan();
    }

    @Override
    public void entryMatched() {
        work.entryMatched();
    }

    private double coilLasts() {
        catchUp();
        return motion.coilLasts();
    }

    @Override
    public void tailLeavesUncoiler() {
        work.tailLeftUncoiler();
    }

    private void keepLatestChange() {
        if (statistics.latestChange() > plan.leaveOut()) {
            statistics.keepLatestChange(workDone);
        }
    }

    private Optional<WorkDone> workOfLatestChange() {
        return state.hasAccumulator() ? Optional.of(work.done()) : Optional.empty();
    }

    private void timeIsUp() {
        keepLatestChange();
        finish();
    }

    private void finish() {
        finished = true;
        trace();
        calendar.stop();
    }

    @Override
    public String describe() {
        return state.describe(work.runningCoil());
    }
}
