package runthrough.simulation.motion;

import java.util.Optional;
import runthrough.plant.Entry.Creep;

/**
 * How the tail of a coil is brought to rest in the joiner: at once from full speed, or creeping over the last metres. Says
 * when the coil change starts (T0), and what the entry may do near the tail.
 *
 * <p>Rules ENTRY-14, ENTRY-15, ENTRY-16, ENTRY-22, NUM-4.
 */
final class RunOut {
    /** A speed this near to creep speed, relative to it, counts as creep speed: rounding must not part the two. */
    private static final double ROUNDING = 1e-9;
    /** A length this small, relative to the distance that it is left of, is none. */
    private static final double LENGTH_ROUNDING = 1e-13;

    private final double deceleration;
    private final double creepSpeed;
    private final double creepLength;
    private boolean nearTail;
    private boolean creeping;

    /** Run-out at {@code deceleration} (m/s2), infinite for at once. */
    RunOut(double deceleration, Optional<Creep> creep) {
        this.deceleration = deceleration;
        creepSpeed = creep.map(Creep::speed).orElse(Double.POSITIVE_INFINITY);
        creepLength = creep.map(Creep::length).orElse(0.0);
    }

    private boolean hasCreep() {
        return creepLength > 0;
    }

    private boolean hasCreepSpeed(double speed) {
        return speed >= creepSpeed * (1 - ROUNDING);
    }

    /** A coil of usable length {@code remaining} (m) has begun. */
    void newCoil(double remaining) {
        creeping = false;
        nearTail = hasCreep() && remaining <= creepLength;
    }

    /** The tail has come within the creep length. */
    void comeNearTail() {
        nearTail = true;
    }

    /** The greatest speed (m/s) that the entry may speed up to. */
    double ceiling() {
        return nearTail ? creepSpeed : Double.POSITIVE_INFINITY;
    }

    /**
     * The greatest speed (m/s) that the entry may jump to and still bring the tail to rest in time; more than 0 even with
     * nothing left, so that a line that was stopped there can start its coil change.
     */
    double jumpCeiling(double remaining) {
        if (nearTail) {
            return Math.min(creepSpeed, fastestToSlow(remaining, 0));
        }
        return hasCreep() ? fastestToSlow(remaining - creepLength, creepSpeed) : fastestToSlow(remaining, 0);
    }

    /** The greatest speed (m/s) from which {@code distance} is enough to slow to {@code endSpeed}; a hair more than that at least. */
    private double fastestToSlow(double distance, double endSpeed) {
        return deceleration < Double.POSITIVE_INFINITY
                ? Math.sqrt(endSpeed * endSpeed + 2 * deceleration * Math.max(distance, Double.MIN_NORMAL))
                : Double.POSITIVE_INFINITY;
    }

    /** Seconds until the coil change starts, if nothing changes before. */
    double timeToStart(double speed, double acceleration, double remaining) {
        if (!hasCreep()) {
            return timeToBrake(remaining, speed, acceleration, 0);
        }
        if (nearTail) {
            double reachesCreep =
                    speed >= creepSpeed ? 0 : acceleration > 0 ? (creepSpeed - speed) / acceleration : Kinematics.NEVER;
            return Math.min(reachesCreep, timeToBrake(remaining, speed, acceleration, 0));
        }
        if (speed <= creepSpeed && acceleration <= 0) {
            return Kinematics.NEVER;
        }
        double time = timeToBrake(remaining - creepLength, speed, acceleration, creepSpeed);
        return hasCreepSpeed(speed + acceleration * time) ? time : Kinematics.NEVER;
    }

    /** Seconds until the tail comes within the creep length at no more than creep speed. */
    double timeToComeNear(double speed, double acceleration, double remaining) {
        if (!hasCreep() || nearTail) {
            return Kinematics.NEVER;
        }
        double time = Kinematics.travel(remaining - creepLength, speed, acceleration);
        return speed + acceleration * time <= creepSpeed * (1 + ROUNDING) ? time : Kinematics.NEVER;
    }

    /** Seconds until the last ramp must begin, while creeping. */
    double timeToEndCreep(double speed, double acceleration, double remaining) {
        return creeping ? timeToBrake(remaining, speed, acceleration, 0) : Kinematics.NEVER;
    }

    /** Seconds until braking at the full rate would use up {@code distance} in coming to {@code endSpeed}. */
    private double timeToBrake(double distance, double speed, double acceleration, double endSpeed) {
        double margin = distance
                - Kinematics.rampDistance(speed, deceleration)
                + Kinematics.rampDistance(endSpeed, deceleration);
        // After a jump to the greatest speed that still stops in time the margin is 0 but for rounding: T0 is at once.
        if (margin <= LENGTH_ROUNDING * distance) {
            return speed > 0 || acceleration > 0 ? 0 : Kinematics.NEVER;
        }
        // The margin shrinks by (1 + a/d) for each metre run, and stays the same while braking at the full rate.
        double shrinkage = 1 + acceleration / deceleration;
        return shrinkage > 0 ? Kinematics.travel(margin / shrinkage, speed, acceleration) : Kinematics.NEVER;
    }

    /** The coil change starts with the entry at {@code speed} (m/s). */
    void start(double speed) {
        creeping = hasCreep() && (!nearTail || hasCreepSpeed(speed));
        nearTail = hasCreep();
    }

    /** The last ramp begins. */
    void endCreep() {
        creeping = false;
    }

    boolean isCreeping() {
        return creeping;
    }

    /** What the entry heads for during run-out (m/s). */
    double goal() {
        return creeping ? creepSpeed : 0;
    }
}
