package runthrough.simulation;

/**
 * The soonest of the motions that may come next; at one instant the one of lower order, then the first offered. Times that
 * only the rounding of the clock parts are one instant: what happens together is found by different sums.
 */
final class Soonest {
    /** So many of the clock's smallest steps are no time at all. */
    private static final int ROUNDING = 4;

    private double now;
    private double delay;
    private Motion motion = Motion.PROCESS_RAMP;

    /** Nothing is offered yet at {@code time} (s). */
    void clear(double time) {
        now = time;
        delay = Kinematics.NEVER;
    }

    /** A motion that would come {@code time} seconds from now, {@code >= 0} or never. */
    void offer(Motion candidate, double time) {
        if (time == Kinematics.NEVER) {
            return;
        }
        double instant = ROUNDING * Math.ulp(now + time);
        if (candidate.order < motion.order ? time <= delay + instant : time < delay - instant) {
            delay = time;
            motion = candidate;
        }
    }

    boolean exists() {
        return delay < Kinematics.NEVER;
    }

    double delay() {
        return delay;
    }

    Motion motion() {
        return motion;
    }
}
