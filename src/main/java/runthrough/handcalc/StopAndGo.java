package runthrough.handcalc;

import java.util.Optional;
import runthrough.plant.Coil;
import runthrough.plant.Entry;
import runthrough.plant.Line;

/**
 * Strip that runs at a speed V, comes to rest when its coil ends, stands, and comes back to V; constant acceleration
 * throughout.
 *
 * @param speed V (m/s), {@code > 0}
 * @param acceleration a (m/s2), {@code > 0}, infinite when the speed rises at once
 * @param deceleration d (m/s2), {@code > 0}, infinite when the speed falls at once
 * @param creep the slow last metres of a coil, if any; its speed below V
 */
public record StopAndGo(double speed, double acceleration, double deceleration, Optional<Entry.Creep> creep) {

    /** The strip at the joiner of {@code line} while {@code coil} runs at the process's speed. */
    public static StopAndGo of(Line line, Coil coil) {
        return new StopAndGo(line.ratedSpeed(coil), line.headAcceleration(), line.tailDeceleration(), line.creep());
    }

    /** Strip (m) that runs while V falls to nothing without creep: {@code V^2/(2 d)}. */
    public double stoppingLength() {
        return speed * speed / (2 * deceleration);
    }

    /** Strip (m) that runs while V is reached from rest: {@code V^2/(2 a)}. */
    public double startingLength() {
        return speed * speed / (2 * acceleration);
    }

    /**
     * How long the creep speed is held (s): the creep length less what stopping from the creep speed takes, {@code (l_c -
     * v_c^2/(2 d)) / v_c}; 0 without creep.
     */
    public double creepTime() {
        if (creep.isEmpty()) {
            return 0;
        }
        Entry.Creep c = creep.get();
        return (c.length() - c.speed() * c.speed() / (2 * deceleration)) / c.speed();
    }

    /** Strip (m) that runs from the start of a coil change until the tail has stopped. Rule FORM-8. */
    public double runOutLength() {
        return creep.map(c -> c.length() + (speed - c.speed()) * (speed + c.speed()) / (2 * deceleration))
                .orElse(stoppingLength());
    }

    /** Time (s) from the start of a coil change until the tail has stopped. */
    public double runOutTime() {
        return speed / deceleration + creepTime();
    }

    /**
     * Strip (m) that does not run because of a stop, against running on at V: {@code V S + V^2/(2 d) + V^2/(2 a) + (V - v_c)
     * t_c}. While standing for S all of V is missed; on a ramp half of V on average, for the time V/d or V/a; while
     * creeping {@code V - v_c}.
     *
     * <p>Rules FORM-1, FORM-8, FORM-10.
     *
     * @param standing how long the strip stands S (s), {@code >= 0}
     */
    public double missed(double standing) {
        return speed * standing + stoppingLength() + startingLength() + missedCreeping();
    }

    /** The part of {@link #missed} that creeping costs (m): {@code (V - v_c) t_c}. */
    public double missedCreeping() {
        return creep.map(c -> (speed - c.speed()) * creepTime()).orElse(0.0);
    }

    /**
     * How long the last {@code length} metres of a coil take to run (s), when the strip runs at V before it slows down.
     *
     * @param length (m), {@code >= 0}
     */
    public double timeOfLast(double length) {
        if (length == 0) {
            return 0;
        }
        double runOut = runOutLength();
        if (length >= runOut) {
            return runOutTime() + (length - runOut) / speed;
        }
        double creepSpeed = creep.map(Entry.Creep::speed).orElse(0.0);
        double creepLength = creep.map(Entry.Creep::length).orElse(0.0);
        double stopFromCreep = creepSpeed * creepSpeed / (2 * deceleration);
        if (length <= stopFromCreep) {
            return Math.sqrt(2 * length / deceleration);
        } else if (length <= creepLength) {
            return creepSpeed / deceleration + (length - stopFromCreep) / creepSpeed;
        }
        double speedThere = Math.sqrt(creepSpeed * creepSpeed + 2 * deceleration * (length - creepLength));
        return speedThere / deceleration + creepTime();
    }
}
