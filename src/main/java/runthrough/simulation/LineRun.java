package runthrough.simulation;

import runthrough.plant.Coil;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;

/**
 * One replication: owns clock, strip, streams and everybody who acts on them, and after each event makes all plans anew,
 * process before entry. A long file, because what may happen at one instant, and in which order, is read in one place.
 */
final class LineRun {
    /** Relative; a coil of exactly the length needed is long enough. */
    private static final double ROUNDING = 1e-12;

    private final Line line;
    private final RunPlan plan;
    private final int index;
    private final EventCalendar calendar = new EventCalendar(this::describe);
    private final LineState strip = new LineState();
    private final NextEvent next = new NextEvent();
    private final ChangeBook book = new ChangeBook();
    private final EventCalendar.Timer nextEvent;
    private final Recorder recorder;
    private final CoilFeed feed;
    private final RunStatistics statistics;
    private final ProcessControl process;
    private final LevelWatch levels;
    private final EntrySection entry;
    private final ChangeWork work;
    private final JointTracker joints;
    private final boolean oneStrip;
    private final double uncoilerPath;

    private double upToDate;
    private double tailStoppedAt;
    private boolean released = true;
    private boolean finished;
    private boolean wasMatched = true;

    LineRun(Line line, RunPlan plan, boolean coilsDiffer, int index, Streams streams, Detail detail) {
        this.line = line;
        this.plan = plan;
        this.index = index;
        oneStrip = line.practice().isOneStrip();
        uncoilerPath = line.entry().uncoilerPath();
        // What rounding may do to a level: beyond it a crossing is a crossing.
        double tolerance = 1e-10 * Math.max(1, oneStrip ? 0 : line.accumulator().capacity());
        recorder = new Recorder(detail);
        feed = new CoilFeed(line, streams, line.entry().uncoilers());
        statistics = new RunStatistics(line, strip, book, tolerance);
        joints = new JointTracker(coilsDiffer);
        RunOut tail = runOut(line);
        process = new ProcessControl(
                line, calendar, this::step, strip, statistics, streams, () -> ceiling(tail), this::ownStopOver);
        levels = new LevelWatch(line, strip, process, tolerance);
        entry = oneStrip
                ? new OneStripEntry(line, strip, process, tail)
                : new AccumulatedEntry(line, strip, process, tail, tolerance);
        work = new ChangeWork(line, feed, calendar, statistics, recorder, streams, this::jointReleased);
        nextEvent = calendar.timer("motion", 1, this::move);
    }

    private static RunOut runOut(Line line) {
        boolean rethreads = line.practice() == Practice.RETHREAD;
        double deceleration = line.practice().isOneStrip()
                ? line.stoppingDeceleration()
                : line.entry().deceleration();
        return new RunOut(
                deceleration,
                rethreads ? java.util.Optional.empty() : line.entry().creep());
    }

    /** The greatest speed (m/s) that the entry allows the process: where they are one strip, it must stop for the tail. */
    private double ceiling(RunOut tail) {
        if (!oneStrip) {
            return Double.POSITIVE_INFINITY;
        }
        return line.startingAcceleration() < Double.POSITIVE_INFINITY
                ? tail.ceiling()
                : Math.max(strip.processSpeed, tail.jumpCeiling(strip.remaining));
    }

    private void ownStopOver() {
        if (!oneStrip) {
            levels.holdIfStripLacks();
        }
    }

    /** Runs from time 0 to the end of the plan. */
    Replication run() {
        begin();
        calendar.run();
        if (!finished) {
            throw new SimulationException("nothing is left to happen at " + calendar.now() + " s: " + describe());
        }
        return new Replication(
                index,
                statistics.totals(calendar.now()),
                book.records(),
                recorder.work(),
                recorder.trace(oneStrip ? 0 : line.accumulator().capacity()));
    }

    private void begin() {
        Coil first = feed.coil(1);
        strip.remaining = firstUsableLength();
        statistics.weigh(first.massPerMetre());
        process.begin(line.ratedSpeed(first));
        levels.ratedSpeed(process.rated());
        entry.begin();
        statistics.beginTotals(0);
        work.begin();
        if (plan.extent() instanceof Extent.Time time) {
            step("end of run", StateEvent.END_ORDER, this::finish).start(time.duration());
        }
        replan();
    }

    /** Usable length (m) of the coil that is running at time 0, at speed: it must be enough to stop in. */
    private double firstUsableLength() {
        double usable = feed.usableLength(1);
        double needed = line.runOutLength(line.ratedSpeed(feed.coil(1)));
        if (usable < needed * (1 - ROUNDING)) {
            throw new SimulationException(
                    "coil 1 ('" + feed.coil(1).name() + "', draw 1 of the coil stream) has " + usable
                            + " m of usable strip, too short to stop in, which takes " + needed
                            + " m. Give longer coils or a faster stop");
        }
        return usable;
    }

    private EventCalendar.Timer step(String name, int order, Runnable action) {
        return calendar.timer(name, order, () -> {
            catchUp();
            action.run();
            replan();
        });
    }

    /** Brings the strip up to the present. */
    private void catchUp() {
        double dt = calendar.now() - upToDate;
        if (dt > 0) {
            statistics.advance(dt, process, entry);
            upToDate = calendar.now();
        }
    }

    private void move() {
        catchUp();
        perform(next.event());
        replan();
    }

    private void perform(StateEvent what) {
        switch (what) {
            case PROCESS_RAMP -> process.arrive();
            case ENTRY_RAMP, ENTRY_MEETS_PROCESS, CREEP_ZONE, CREEP_ENDS, SETTLES -> entry.perform(what);
            case STARVES, SLOWS, RESUMES, RESTARTS -> levels.perform(what);
            case NEW_RATED_SPEED -> jointReachesProcess();
            case CHANGE_STARTS -> changeStarts();
            case TAIL_LEAVES_UNCOILER -> work.tailLeftUncoiler();
        }
    }

    private void replan() {
        if (finished) {
            return;
        }
        process.plan();
        entry.plan();
        if (entry.tailHasStopped()) {
            tailStops();
            replan();
        } else {
            noteMatch();
            scheduleNextMotion();
        }
    }

    private void scheduleNextMotion() {
        next.clear();
        next.offer(StateEvent.PROCESS_RAMP, process.rampTime());
        entry.offerTo(next);
        if (!oneStrip) {
            levels.offerTo(next, released);
        }
        next.offer(StateEvent.NEW_RATED_SPEED, joints.timeToNext(strip));
        if (uncoilerPath > 0 && work.tailIsOnUncoiler()) {
            next.offer(
                    StateEvent.TAIL_LEAVES_UNCOILER,
                    Kinematics.travel(strip.remaining - uncoilerPath, strip.entrySpeed, strip.entryAcceleration));
        }
        nextEvent.stopIfPending();
        if (next.exists()) {
            nextEvent.start(next.delay(), next.event().order);
        }
        trace();
    }

    private void trace() {
        if (recorder.isTracing()) {
            recorder.point(calendar.now(), strip, entry, process);
        }
    }

    private void noteMatch() {
        boolean matched = entry.isMatched();
        if (matched && !wasMatched) {
            book.matched(calendar.now());
        }
        wasMatched = matched;
    }

    /** T0. */
    private void changeStarts() {
        int number = work.runningCoil();
        boolean counts = number > plan.leaveOut() + 1;
        book.close(counts);
        if (plan.extent() instanceof Extent.Changes wanted && number > wanted.changes()) {
            finish();
            return;
        }
        if (plan.leaveOut() > 0 && number == plan.leaveOut() + 1) {
            statistics.beginTotals(calendar.now());
        }
        released = false;
        wasMatched = false;
        statistics.changeBegins(
                calendar.now(),
                feed.kind(number),
                feed.kind(number + 1),
                oneStrip ? 0 : levels.stopLevelAtRated(),
                process);
        entry.runOut();
    }

    /** T1. */
    private void tailStops() {
        tailStoppedAt = calendar.now();
        book.tailStopped(tailStoppedAt);
        work.tailStopped();
    }

    /** T2. */
    private void jointReleased() {
        catchUp();
        int next = work.runningCoil();
        Coil coil = feed.coil(next);
        released = true;
        strip.remaining = feed.usableLength(next) - cropsOfRejects(next);
        statistics.jointReleased(calendar.now(), calendar.now() - tailStoppedAt, work.waited(), work.passes());
        joints.add(marksProcessAt(), coil);
        entry.release();
        replan();
    }

    /** Strip (m) that rejected joints before coil {@code next} have cost it. */
    private double cropsOfRejects(int next) {
        double perReject = feed.coil(next - 1).tailCrop() + feed.coil(next).headCrop();
        double cut = (work.passes() - 1) * perReject;
        if (!(feed.usableLength(next) > cut)) {
            throw new SimulationException(
                    "coil " + next + " ('" + feed.coil(next).name() + "') has "
                            + feed.usableLength(next) + " m of usable strip, used up by " + (work.passes() - 1)
                            + " rejected joints of " + perReject
                            + " m each. Give longer coils, shorter crops or fewer rejects");
        }
        return cut;
    }

    /** Metres processed (m) at which the process sees the joint just released. */
    private double marksProcessAt() {
        boolean rethreads = line.practice() == Practice.RETHREAD;
        return strip.processed + strip.level + (rethreads ? 0 : line.process().path());
    }

    private void jointReachesProcess() {
        Coil coil = joints.arrive();
        statistics.weigh(coil.massPerMetre());
        process.changeRatedSpeed(line.ratedSpeed(coil));
        levels.ratedSpeed(process.rated());
    }

    private void finish() {
        finished = true;
        if (plan.extent() instanceof Extent.Time) {
            book.close(book.latest() > plan.leaveOut());
        }
        trace();
        calendar.stop();
    }

    private String describe() {
        return "entry " + entry.state() + " at " + strip.entrySpeed + " m/s, process at " + strip.processSpeed
                + " m/s heading for " + process.heading() + " m/s, level " + strip.level + " m, " + strip.remaining
                + " m of coil " + work.runningCoil() + " left, joint " + (released ? "released" : "under way");
    }
}
