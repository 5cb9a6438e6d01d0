package runthrough.simulation;

import runthrough.plant.Line;

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
 */
final class SettledLevel {
    private final LineState strip;
    private final ProcessControl process;
    private final double entryUp;
    private final double entryDown;
    private final double processUp;
    private final double processDown;

    SettledLevel(Line line, LineState strip, ProcessControl process) {
        this.strip = strip;
        this.process = process;
        entryUp = line.entry().acceleration();
        entryDown = line.entry().deceleration();
        processUp = line.process().acceleration();
        processDown = line.process().deceleration();
    }

    /** X with the strip as it is (m). */
    double now() {
        return withEntryAt(strip.entrySpeed);
    }

    /** X if the entry speed were {@code entrySpeed} (m/s). */
    double withEntryAt(double entrySpeed) {
        double target = process.heading();
        double ofEntry = entrySpeed >= target
                ? Kinematics.rampDistance(entrySpeed - target, entryDown)
                : -Kinematics.rampDistance(target - entrySpeed, entryUp);
        double ofProcess = strip.processSpeed >= target
                ? -Kinematics.rampDistance(strip.processSpeed - target, processDown)
                : Kinematics.rampDistance(target - strip.processSpeed, processUp);
        return strip.level + ofEntry + ofProcess;
    }

    /** The speed (m/s), no less than v*, to which the entry may jump with X no higher than {@code limit} (m). */
    double highestJump(double limit) {
        double room = limit - withEntryAt(process.heading());
        return process.heading() + Math.sqrt(2 * entryDown * Math.max(0, room));
    }

    /**
     * Seconds until X has risen to {@code limit} (m) with the entry no slower than v*, or never.
     *
     * @param tolerance how far below the limit counts as there (m)
     */
    double timeToRise(double limit, double tolerance) {
        double over = strip.entrySpeed - process.heading();
        double acceleration = strip.entryAcceleration;
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
        double share = 1 + acceleration / entryDown;
        return Kinematics.rise(room, over * share, acceleration / 2 * share);
    }

    /** Seconds until X has fallen to {@code limit} (m), the entry holding a speed below v*. */
    double timeToFall(double limit) {
        return Math.max(0, now() - limit) / (process.heading() - strip.entrySpeed);
    }
}
