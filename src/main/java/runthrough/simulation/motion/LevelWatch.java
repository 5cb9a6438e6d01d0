package runthrough.simulation.motion;

import runthrough.plant.Line;
import runthrough.plant.ProcessSection.Slowing;
import runthrough.simulation.calendar.EventOrder;

/**
 * Watches the level for the process: when it must stop, slow down, take up speed or start again. All in SI units.
 *
 * <p>Rules PROC-3, PROC-4, PROC-7, PROC-8, NUM-6.
 */
final class LevelWatch {
    private final Line line;
    private final LineState state;
    private final ProcessControl process;
    private final double reserve;
    private final boolean canSlow;
    private final double slowLevel;
    private final double resumeLevel;
    private final Starves starves = new Starves();
    private final Slows slows = new Slows();
    private final Resumes resumes = new Resumes();
    private final Restarts restarts = new Restarts();

    LevelWatch(Line line, LineState state, ProcessControl process) {
        this.line = line;
        this.state = state;
        this.process = process;
        reserve = line.accumulator().reserve();
        canSlow = line.process().slowing().isPresent();
        slowLevel = line.process().slowing().map(Slowing::level).orElse(Double.NaN);
        resumeLevel = line.process().slowing().map(line::resumeLevel).orElse(Double.NaN);
    }

    /** Offers what the level will bring about next. */
    void offerTo(NextEvent next) {
        // At -d_p only the entry changes g, upwards: no root is looked for.
        if (state.target() > 0 && state.process.acceleration >= 0) {
            next.offer(starves);
        }
        if (canSlow && !state.slowed) {
            next.offer(slows);
        }
        if (!state.released) {
            return;
        }
        if (canSlow && state.slowed) {
            next.offer(resumes);
        }
        if (process.mayAskToRestart()) {
            next.offer(restarts);
        }
    }

    /**
     * Whether the level stays above all that is watched for during {@code dt} seconds of unchanged plans, with the process at
     * its rated speed. What is within rounding of it counts as not above.
     */
    boolean staysAbove(double dt) {
        double watched = canSlow ? Math.max(slowLevel, state.stopLevelAtRated()) : state.stopLevelAtRated();
        return state.lowestWithin(dt) > watched + 2 * state.tolerance;
    }

    /**
     * Seconds until the level is {@code level} (m) or more. An entry that settles only touches the capacity as it arrives
     * there: rounding must not take that for a crossing a moment before, so a touch is left to the arrival, which sets the
     * level exactly.
     */
    private double timeToReach(double level) {
        double rate = state.levelRate();
        double bend = state.levelBend();
        double rise = level - state.level;
        boolean isConstant = rate == 0 && bend == 0;
        if (rise <= (isConstant ? state.tolerance : 0)) {
            return 0;
        }
        boolean touches = bend < 0 && -rate * rate / (4 * bend) <= rise + state.tolerance;
        return touches ? Kinematics.NEVER : Kinematics.rise(rise, rate, bend);
    }

    /** {@code g = x - R - v_p^2/(2 d_p)} falls through 0. */
    private final class Starves extends StateEvent {
        Starves() {
            super(EventOrder.STARVES);
        }

        @Override
        double timeTo() {
            double speed = state.process.speed;
            double acceleration = state.process.acceleration;
            double down = state.process.down;
            double margin = state.level - reserve - Kinematics.rampDistance(speed, down);
            double rate = state.levelRate() - speed * acceleration / down;
            double bend = state.levelBend() - acceleration * acceleration / (2 * down);
            return Kinematics.fallBelow(margin, rate, bend, state.tolerance);
        }

        @Override
        void happen() {
            process.starve();
        }
    }

    /** x falls through x_slow. */
    private final class Slows extends StateEvent {
        Slows() {
            super(EventOrder.SLOWS);
        }

        @Override
        double timeTo() {
            return Kinematics.fallBelow(state.level - slowLevel, state.levelRate(), state.levelBend(), state.tolerance);
        }

        @Override
        void happen() {
            process.slow();
        }
    }

    /** x has risen to x_resume. */
    private final class Resumes extends StateEvent {
        Resumes() {
            super(EventOrder.RESUMES);
        }

        @Override
        double timeTo() {
            return timeToReach(resumeLevel);
        }

        @Override
        void happen() {
            process.resume();
        }
    }

    /** x has risen to x_restart. */
    private final class Restarts extends StateEvent {
        Restarts() {
            super(EventOrder.RESTARTS);
        }

        @Override
        double timeTo() {
            return timeToReach(line.restartLevel(state.rated));
        }

        @Override
        void happen() {
            process.restartAfterDelay();
        }
    }
}
