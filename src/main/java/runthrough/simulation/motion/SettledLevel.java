package runthrough.simulation.motion;

/**
 * The settled level X: where the level would come to rest if the entry now ramped to the speed v* that the process is heading
 * for.
 *
 * <pre>
 *   X = x + (v_e - v*)^2 / (2 d_e)   for v_e &gt;= v*     or   x - (v* - v_e)^2 / (2 a_e)   for v_e &lt; v*
 *         - (v_p - v*)^2 / (2 d_p)   while the process slows towards v*
 *         + (v* - v_p)^2 / (2 a_p)   while it speeds up towards v*
 * </pre>
 *
 * <p>It moves only as far as the entry departs from that ramp: while the entry, slower than v*, speeds up at a_e, and while
 * it slows at d_e, X stays as it is. All in SI units.
 *
 * <p>Rules ENTRY-1, NUM-4.
 */
final class SettledLevel {
    private final LineState state;
    private final StripEnd entry;
    private final StripEnd process;

    SettledLevel(LineState state) {
        this.state = state;
        entry = state.entry;
        process = state.process;
    }

    /** X with the strip as it is (m). */
    double now() {
        return withEntryAt(entry.speed);
    }

    /** X if the entry speed were {@code speed} (m/s). */
    private double withEntryAt(double speed) {
        double target = state.target();
        double ofEntry = speed >= target
                ? Kinematics.rampDistance(speed - target, entry.down)
                : -Kinematics.rampDistance(target - speed, entry.up);
        double ofProcess = process.speed >= target
                ? -Kinematics.rampDistance(process.speed - target, process.down)
                : Kinematics.rampDistance(target - process.speed, process.up);
        return state.level + ofEntry + ofProcess;
    }

    /** The speed (m/s), no less than v*, to which the entry may jump with X no higher than {@code limit} (m). */
    double highestJump(double limit) {
        double room = limit - withEntryAt(state.target());
        return state.target() + Math.sqrt(2 * entry.down * Math.max(0, room));
    }

    /**
     * Seconds until X has risen to {@code limit} (m) with the entry no slower than v*, or never.
     *
     * @param tolerance how far below the limit counts as there (m)
     */
    double timeToRise(double limit, double tolerance) {
        double over = entry.speed - state.target();
        double acceleration = entry.acceleration;
        double room = limit - now();
        if (over < 0) {
            double reachesTarget = acceleration > 0 ? -over / acceleration : Kinematics.NEVER;
            return room <= tolerance ? reachesTarget : reachesTarget + rise(room, 0, acceleration);
        }
        if (room <= tolerance) {
            return 0;
        }
        return acceleration < 0 ? Kinematics.NEVER : rise(room, over, acceleration);
    }

    /** Time for a rise of {@code room}, the entry being {@code over} faster than v*: each metre gained costs as much again in slowing. */
    private double rise(double room, double over, double acceleration) {
        double share = 1 + acceleration / entry.down;
        return Kinematics.rise(room, over * share, acceleration / 2 * share);
    }

    /** Seconds until X has fallen to {@code limit} (m), the entry holding a speed below v*. */
    double timeToFall(double limit) {
        return Math.max(0, now() - limit) / (state.target() - entry.speed);
    }
}
