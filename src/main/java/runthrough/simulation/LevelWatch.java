package runthrough.simulation;

import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Slowing;

/**
 * Watches the level for the process: when it must stop, slow down, take up speed or start again.
 *
 * <p>The process must stop when {@code g = x - R - v_p^2/(2 d_p)} falls through 0, a touch being no crossing. All in SI
 * units.
 */
final class LevelWatch {
    private final Line line;
    private final LineState strip;
    private final ProcessControl process;
    private final double reserve;
    private final double down;
    private final double tolerance;
    private final boolean canSlow;
    private final double slowLevel;
    private final double resumeLevel;
    private double restartLevel;
    private double stopLevelAtRated;

    LevelWatch(Line line, LineState strip, ProcessControl process, double tolerance) {
        this.line = line;
        this.strip = strip;
        this.process = process;
        this.tolerance = tolerance;
        reserve = line.accumulator().reserve();
        down = line.process().deceleration();
        canSlow = line.process().slowing().isPresent();
        slowLevel = line.process().slowing().map(Slowing::level).orElse(Double.NaN);
        resumeLevel = line.process().slowing().map(line::resumeLevel).orElse(Double.NaN);
    }

    /** Takes the levels that belong to a rated speed (m/s). */
    void ratedSpeed(double rated) {
        restartLevel = line.restartLevel(rated);
        stopLevelAtRated = line.stopLevel(rated);
    }

    /** Level (m) at which the process must stop when it runs at its rated speed. */
    double stopLevelAtRated() {
        return stopLevelAtRated;
    }

    /** A stop of the process's own has ended: with too little strip to run at rated speed, it is held as starved. */
    void holdIfStripLacks() {
        if (strip.level < stopLevelAtRated - tolerance) {
            process.holdAsStarved();
        }
    }

    /** Offers what the level will bring about next; {@code released} says whether no joint holds the process back. */
    void offerTo(NextEvent next, boolean released) {
        double rate = strip.levelRate();
        double bend = strip.levelBend();
        if (process.heading() > 0) {
            double speed = strip.processSpeed;
            double acceleration = strip.processAcceleration;
            double spare = strip.level - reserve - Kinematics.rampDistance(speed, down);
            double spareRate = rate - speed * acceleration / down;
            double spareBend = bend - acceleration * acceleration / (2 * down);
            next.offer(StateEvent.STARVES, Kinematics.fallBelow(spare, spareRate, spareBend, tolerance));
        }
        if (canSlow) {
            if (!process.isSlowed()) {
                next.offer(StateEvent.SLOWS, Kinematics.fallBelow(strip.level - slowLevel, rate, bend, tolerance));
            } else if (released) {
                next.offer(StateEvent.RESUMES, timeToReach(resumeLevel, rate, bend));
            }
        }
        if (released && process.mayAskToRestart()) {
            next.offer(StateEvent.RESTARTS, timeToReach(restartLevel, rate, bend));
        }
    }

    /**
     * Seconds until the level is {@code level} (m) or more. An entry that settles only touches the capacity as it arrives
     * there: rounding must not take that for a crossing a moment before, so a touch is left to the arrival, which sets the
     * level exactly.
     */
    private double timeToReach(double level, double rate, double bend) {
        double rise = level - strip.level;
        boolean isConstant = rate == 0 && bend == 0;
        if (rise <= (isConstant ? tolerance : 0)) {
            return 0;
        }
        boolean touches = bend < 0 && -rate * rate / (4 * bend) <= rise + tolerance;
        return touches ? Kinematics.NEVER : Kinematics.rise(rise, rate, bend);
    }

    void perform(StateEvent event) {
        switch (event) {
            case STARVES -> process.starve(0);
            case SLOWS -> process.slow();
            case RESUMES -> process.resume();
            case RESTARTS -> process.restartAfterDelay();
            default -> throw new IllegalArgumentException("not an event of the level: " + event);
        }
    }
}
