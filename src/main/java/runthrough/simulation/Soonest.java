package runthrough.simulation;

/** The soonest of the motions that may come next; at one time the one of lower order, then the first offered. */
final class Soonest {
    private double delay;
    private Motion motion = Motion.PROCESS_RAMP;

    void clear() {
        delay = Kinematics.NEVER;
    }

    /** A motion that would come {@code time} seconds from now, {@code >= 0} or never. */
    void offer(Motion candidate, double time) {
        if (time < delay || (time == delay && candidate.order < motion.order)) {
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
