package runthrough.simulation.motion;

import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.plant.check.LinePart;
import runthrough.quantity.Numbers;
import runthrough.simulation.account.RunStatistics;
import runthrough.simulation.calendar.EventCalendar;
import runthrough.simulation.calendar.EventOrder;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.Sampler;
import runthrough.simulation.random.SourceNames;
import runthrough.simulation.records.SimulationException;

/**
 * The process section: what holds it, what it is heading for, and when that changes by its own doing. The levels at which it
 * slows, stops and starts are watched by {@link LevelWatch}.
 *
 * <p>Rules PROC-1, PROC-4, PROC-6, PROC-7, PROC-9, PROC-11, PASS-2, BREAK-2, BREAK-4, DOWN-5.
 */
final class ProcessControl {
    /** More starved stops in one coil change than this come of a restart into the next stop. */
    private static final int MOST_STARVED_STOPS = 1000;

    private static final String RESTART_LEVEL = LinePart.RESTART_LEVEL.path();

    /** Of numbers in a message. */
    private static final int DIGITS = 3;

    private final Line line;
    private final LineState state;
    private final EventCalendar calendar;
    private final RunStatistics statistics;
    private final double slowedSpeed;
    private final Sampler restartDelay;
    private final DowntimeControl downtime;
    private final JointBreaks jointBreaks;
    private final EventCalendar.Timer restart;
    private final RampEnds rampEnds = new RampEnds();

    private boolean restarting;
    private int restartedIn;
    private int restarts = -1;

    /** A process of {@code line}. */
    ProcessControl(
            Line line, LineState state, EventCalendar calendar, RunStatistics statistics, RandomNumbers numbers) {
        this.line = line;
        this.state = state;
        this.calendar = calendar;
        this.statistics = statistics;
        slowedSpeed = line.process().slowing().map(Slowing::speed).orElse(Double.POSITIVE_INFINITY);
        restartDelay = new Sampler(line.process().restartDelay(), numbers.source(SourceNames.RESTART));
        restart = calendar.step("restart after delay", EventOrder.TIMER, this::letGo);
        downtime = new DowntimeControl(line, state, calendar, statistics, numbers, this::holdWhereStripLacks);
        jointBreaks = new JointBreaks(line, state, calendar, statistics, numbers, this::holdWhereStripLacks);
    }

    /** Puts the process at its rated speed (m/s) at time 0. */
    void begin(double ratedSpeed) {
        state.rated = ratedSpeed;
        state.process.hold(ratedSpeed);
        downtime.begin();
    }

    /** Starved, at rest, and not yet waiting for its restart delay to pass. */
    boolean mayAskToRestart() {
        return state.starved && !restarting && state.process.stands();
    }

    /**
     * A starved stop begins.
     *
     * @throws runthrough.simulation.records.SimulationException when there are too many of them in one coil change
     */
    void starve() {
        state.starved = true;
        statistics.starvedStop();
        if (statistics.starvedStopsOfLatestChange() > MOST_STARVED_STOPS) {
            throw new SimulationException(tooManyStops(), RESTART_LEVEL);
        }
    }

    private String tooManyStops() {
        boolean isDefault = Double.isNaN(line.process().restartLevel());
        return "more than " + MOST_STARVED_STOPS + " starved stops in coil change " + statistics.latestChange()
                + ", at "
                + Numbers.text(calendar.now(), DIGITS) + " s: the process restarts at a level of "
                + Numbers.text(line.restartLevel(state.rated), DIGITS) + " m"
                + (isDefault ? " (the default, as none is given)" : "") + " and must stop at "
                + Numbers.text(line.stopLevel(state.rated), DIGITS)
                + " m, so that it restarts into the next stop. Give a " + (isDefault ? "" : "higher ") + RESTART_LEVEL
                + ", or let the entry speed up faster.";
    }

    /** Downtime or a repair has ended; the last of them leaves it held as starved where strip lacks, which is no new stop. */
    private void holdWhereStripLacks() {
        boolean isHeld = state.starved || state.down || state.broken;
        if (!isHeld && state.level < state.stopLevelAtRated() - state.tolerance) {
            state.starved = true;
            statistics.heldAsStarved();
        }
    }

    void slow() {
        state.slowed = true;
        statistics.slowing();
    }

    void resume() {
        state.slowed = false;
    }

    /** Lets a starved process go after the restart delay, which nothing revokes. */
    void restartAfterDelay() {
        int change = statistics.latestChange();
        restarts = change == restartedIn ? restarts + 1 : 0;
        restartedIn = change;
        double delay = restartDelay.draw(change, restarts);
        if (delay == 0) {
            letGo();
        } else {
            restarting = true;
            restart.start(delay);
        }
    }

    /** Starvation holds the process no longer. */
    void letGo() {
        state.starved = false;
        restarting = false;
    }

    /** Makes its plan anew, the speed it heads for and the ramp there, as far as {@code entry} allows. */
    void plan(EntrySection entry) {
        boolean stood = state.process.stands();
        boolean moved = state.process.speed > 0;
        state.process.rampTo(chooseTarget(entry));
        if (stood != state.process.stands()) {
            if (stood) {
                downtime.processMoves();
            } else {
                comeToRest(moved);
            }
        }
        statistics.noteRecovery();
    }

    private double chooseTarget(EntrySection entry) {
        if (state.down || state.broken) {
            return 0;
        }
        double rated = Math.min(state.rated, state.passageSpeed);
        double held = state.starved ? entry.speedWhileStarved() : state.slowed ? slowedSpeed : rated;
        return Math.min(Math.min(held, rated), entry.processCeiling());
    }

    /** At rest; {@code moved} says whether it did not only set out, to be stopped at that instant. */
    private void comeToRest(boolean moved) {
        if (moved) {
            statistics.cameToRest();
        }
        downtime.processRests();
        jointBreaks.processRests();
    }

    JointBreaks jointBreaks() {
        return jointBreaks;
    }

    /** Offers the end of its ramp. */
    void offerTo(NextEvent next) {
        next.offer(rampEnds);
    }

    private final class RampEnds extends StateEvent {
        RampEnds() {
            super(EventOrder.RAMP_ENDS);
        }

        @Override
        double timeTo() {
            return state.process.timeToGoal();
        }

        @Override
        void happen() {
            state.process.arrive();
            if (state.process.speed == 0) {
                comeToRest(true);
            }
        }
    }
}
