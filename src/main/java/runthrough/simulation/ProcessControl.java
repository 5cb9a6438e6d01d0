package runthrough.simulation;

import java.util.function.DoubleSupplier;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Slowing;

/**
 * The process section: what holds it, what it is heading for, and when that changes by its own doing. The levels at which it
 * slows, stops and starts are watched by {@link LevelWatch}.
 */
final class ProcessControl {
    private final LineState strip;
    private final RunStatistics statistics;
    private final double up;
    private final double down;
    private final double slowedSpeed;
    private final Sampler restartDelay;
    private final OwnStopClock ownStopClock;
    private final EventCalendar.Timer restart;
    private final DoubleSupplier ceiling;
    private final Runnable afterOwnStop;

    private double rated;
    private double heading;
    private boolean starved;
    private boolean slowed;
    private boolean ownStop;
    private boolean restarting;
    private int restartedIn;
    private int restarts;
    /** What a starved process heads for: 0, or the creep speed where it is one strip with a creeping entry. */
    private double starvedSpeed;

    /**
     * A process of {@code line}.
     *
     * @param ceiling the greatest speed (m/s) that the entry allows: infinite unless the two are one strip
     * @param afterOwnStop is asked whether strip lacks when a stop of its own ends
     */
    ProcessControl(
            Line line,
            EventCalendar calendar,
            TimerFactory steps,
            LineState strip,
            RunStatistics statistics,
            Streams streams,
            DoubleSupplier ceiling,
            Runnable afterOwnStop) {
        this.strip = strip;
        this.statistics = statistics;
        this.ceiling = ceiling;
        this.afterOwnStop = afterOwnStop;
        up = line.startingAcceleration();
        down = line.stoppingDeceleration();
        slowedSpeed = line.process().slowing().map(Slowing::speed).orElse(Double.POSITIVE_INFINITY);
        restartDelay = new Sampler("restart delay", line.process().restartDelay(), streams, Source.RESTART_DELAY);
        restart = steps.timer("restart after delay", StateEvent.TIMER_ORDER, this::letGo);
        ownStopClock = new OwnStopClock(
                line.process().downtime(), calendar, steps, streams, this::beginOwnStop, this::endOwnStop);
    }

    /** Puts the process at its rated speed (m/s) at time 0. */
    void begin(double ratedSpeed) {
        rated = ratedSpeed;
        heading = ratedSpeed;
        strip.processSpeed = ratedSpeed;
        ownStopClock.draw();
        ownStopClock.run();
    }

    /** The rated speed V in force (m/s). */
    double rated() {
        return rated;
    }

    /** The speed v* that the process is heading for (m/s): its present one when it is not ramping. */
    double heading() {
        return heading;
    }

    boolean isStarved() {
        return starved;
    }

    boolean isSlowed() {
        return slowed;
    }

    boolean isInOwnStop() {
        return ownStop;
    }

    /** Whether it is at rest and will stay so until something lets it go. */
    boolean stands() {
        return strip.processSpeed == 0 && strip.processAcceleration == 0;
    }

    /** Starved, at rest, and not yet waiting for its restart delay to pass. */
    boolean mayAskToRestart() {
        return starved && !restarting && stands();
    }

    /** Begins a starved stop; {@code towards} is 0, or the creep speed of a one-strip line (m/s). */
    void starve(double towards) {
        hold(towards);
        statistics.starvedStop();
    }

    /** Holds it as starved after a stop of its own, which is no new stop. */
    void holdAsStarved() {
        hold(0);
        statistics.heldAsStarved();
    }

    private void hold(double towards) {
        starved = true;
        starvedSpeed = towards;
    }

    /** What a starved process heads for from now on (m/s). */
    void headWhileStarved(double towards) {
        starvedSpeed = towards;
    }

    void slow() {
        slowed = true;
        statistics.slowing();
    }

    void resume() {
        slowed = false;
    }

    void changeRatedSpeed(double speed) {
        rated = speed;
    }

    /** Lets a starved process go after the restart delay, which nothing revokes. */
    void restartAfterDelay() {
        int change = statistics.latestChange();
        restarts = change == restartedIn ? restarts + 1 : 1;
        restartedIn = change;
        double delay = restartDelay.next(change, restarts);
        if (delay == 0) {
            letGo();
        } else {
            restarting = true;
            restart.start(delay);
        }
    }

    /** Starvation holds the process no longer. */
    void letGo() {
        starved = false;
        restarting = false;
    }

    private void beginOwnStop() {
        ownStop = true;
        statistics.ownStop();
    }

    private void endOwnStop() {
        ownStop = false;
        ownStopClock.draw();
        if (!starved) {
            afterOwnStop.run();
        }
    }

    /** Makes its plan anew: the speed it heads for and the ramp there. */
    void plan() {
        heading = chooseHeading();
        boolean stood = stands();
        strip.rampProcess(heading, up, down);
        if (stood != stands()) {
            if (stood) {
                ownStopClock.run();
            } else {
                comeToRest();
            }
        }
        statistics.noteRecovery(starved || slowed, strip.processSpeed >= rated);
    }

    private double chooseHeading() {
        if (ownStop) {
            return 0;
        }
        double free = slowed ? Math.min(slowedSpeed, rated) : rated;
        return Math.min(starved ? Math.min(starvedSpeed, rated) : free, ceiling.getAsDouble());
    }

    /** Seconds until its ramp ends. */
    double rampTime() {
        return strip.processAcceleration == 0
                ? Kinematics.NEVER
                : Math.max(0, (heading - strip.processSpeed) / strip.processAcceleration);
    }

    /** Its ramp has ended: the speed is exactly what it headed for. */
    void arrive() {
        strip.processSpeed = heading;
        strip.processAcceleration = 0;
        if (heading == 0) {
            comeToRest();
        }
    }

    private void comeToRest() {
        statistics.cameToRest();
        ownStopClock.pause();
        if (ownStop) {
            ownStopClock.stand();
        }
    }
}
