package runthrough.handcalc;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Coil;
import runthrough.plant.Line;

/**
 * What a coil change takes from an accumulator, in closed form, for coils of one kind at one rated process speed V. The
 * accumulator is full and the entry runs at V when the change begins; the process holds V throughout.
 *
 * @param entry the strip at the joiner: V, its acceleration a_e and deceleration d_e, its creep
 * @param topSpeed of the entry V_e (m/s)
 * @param capacity of the accumulator C (m)
 * @param reserve R (m), never planned to be used
 * @param fillRateLimit F (m/s), infinite for none
 * @param processDeceleration d_p (m/s2), infinite when the process stops at once
 * @param usable strip L of a coil between its crops (m)
 */
public record ClosedForms(
        StopAndGo entry,
        double topSpeed,
        double capacity,
        double reserve,
        double fillRateLimit,
        double processDeceleration,
        double usable) {

    /**
     * The closed forms for {@code line} with nothing but coils of the kind {@code coil}, of mean length, each rejected joint
     * having cost one more pair of crops.
     */
    public static ClosedForms of(Line line, Coil coil) {
        double crops = coil.headCrop() + coil.tailCrop();
        return new ClosedForms(
                StopAndGo.of(line, coil),
                line.entry().topSpeed(),
                line.accumulator().capacity(),
                line.accumulator().reserve(),
                line.accumulator().fillRateLimit(),
                line.process().deceleration(),
                coil.meanUsableLength() - extraPasses(line) * crops);
    }

    /** How often per coil change a joint is made again; without a joiner there is none to be rejected. */
    static double extraPasses(Line line) {
        return line.work().reject().meanExtraPasses();
    }

    /** The same with an accumulator of {@code metres}. */
    public ClosedForms holding(double metres) {
        return new ClosedForms(entry, topSpeed, metres, reserve, fillRateLimit, processDeceleration, usable);
    }

    private double speed() {
        return entry.speed();
    }

    /** What the process takes to stop from V (m): {@code V^2/(2 d_p)}. */
    public double processStoppingLength() {
        return speed() * speed() / (2 * processDeceleration);
    }

    /**
     * Strip drawn D (m): what the process uses and the entry does not bring, from the start of the change until the entry is
     * back at V.
     *
     * <p>Rule FORM-1.
     *
     * @param joint the joint cycle time T (s), {@code >= 0}
     */
    public double stripDrawn(double joint) {
        return entry.missed(joint);
    }

    /**
     * Capacity needed (m) for a joint cycle time T (s), so that the process never has to begin a stop: {@code D + R + V^2/(2 d_p)}.
     *
     * <p>Rule FORM-2.
     */
    public double capacityNeeded(double joint) {
        return stripDrawn(joint) + reserve + processStoppingLength();
    }

    /**
     * The longest joint cycle time (s) that the accumulator bears: the capacity needed set equal to C and solved for T. Negative
     * when even a joint in no time takes too much.
     *
     * <p>Rule FORM-3.
     */
    public double longestJoint() {
        return (capacity - capacityNeeded(0)) / speed();
    }

    /**
     * The fastest process speed (m/s) at which the accumulator bears a joint of {@code joint} seconds. With {@code k} for
     * {@code 1/(2 d_e) + 1/(2 a_e) + 1/(2 d_p)} and the creep time t_c, the capacity needed set equal to C reads {@code k V^2
     * + (T + t_c) V - (C - R + v_c t_c) = 0}; its positive root is written so that no digits cancel and k may be 0. It knows
     * nothing of the entry's top speed. Infinite when neither ramps nor joint take any time.
     *
     * <p>Rules FORM-4, FORM-8.
     */
    public double fastestSpeed(double joint) {
        double k = 1 / (2 * entry.deceleration()) + 1 / (2 * entry.acceleration()) + 1 / (2 * processDeceleration);
        double creepTime = entry.creepTime();
        double linear = joint + creepTime;
        double creepStrip = entry.creep().isPresent() ? entry.creep().get().speed() * creepTime : 0;
        double strip = capacity - reserve + creepStrip;
        return strip == 0 ? 0 : 2 * strip / (linear + Math.sqrt(linear * linear + 4 * k * strip));
    }

    /** How much faster than the process the entry may run while it fills (m/s): {@code min(V_e - V, F)}. */
    public double overspeed() {
        return Math.min(topSpeed - speed(), fillRateLimit);
    }

    /** Strip (m) gained while the entry speeds up by the overspeed u and slows down by it: {@code u^2/(2 a_e) + u^2/(2 d_e)}. */
    public double gainOnRamps() {
        double u = overspeed();
        return u * u / (2 * entry.acceleration()) + u * u / (2 * entry.deceleration());
    }

    /** Filling up again after a joint of {@code joint} seconds; empty when the entry cannot run faster than the process. */
    public Optional<Refill> refill(double joint) {
        return overspeed() > 0 ? Optional.of(refillOf(stripDrawn(joint))) : Optional.empty();
    }

    /**
     * Filling up {@code drawn} metres. When the ramps alone would gain more than that, the entry turns back at the overspeed
     * at which both ramps gain just that: {@code u^2/(2 a) + u^2/(2 d) = D}. Else it holds u for {@code (D - gain)/u}. The
     * strip that passes the joiner is what is gained and what the process uses meanwhile, after the start from rest.
     *
     * <p>Rule FORM-5.
     */
    Refill refillOf(double drawn) {
        double perSpeed = 1 / entry.acceleration() + 1 / entry.deceleration();
        double u = overspeed();
        double gain = gainOnRamps();
        boolean isHeld = gain <= drawn;
        if (!isHeld) {
            u = Math.sqrt(2 * drawn / perSpeed);
            gain = drawn;
        }
        double time = isHeld ? u * perSpeed + (drawn - gain) / u : u * perSpeed;
        double entryStrip = entry.startingLength() + drawn + speed() * time;
        return new Refill(u, isHeld, gain, time, speed() / entry.acceleration() + time, entryStrip);
    }

    /** Strip (m) of a coil that passes the joiner before the next coil change begins: what is not needed to run out. */
    public double stripBeforeChange() {
        return usable - entry.runOutLength();
    }

    /**
     * The longest joint cycle time (s) after which the accumulator is full again when the next coil change begins; empty when the
     * entry cannot run faster than the process, negative when even a joint in no time would be too long.
     *
     * <p>With all of the coil's strip before the change used for filling, {@code V^2/(2 a_e) + D + V t = L - run-out}, where t
     * is the refill time. While u is held, t grows by 1/u with each metre; before that, {@code t = sqrt(2 D (1/a_e +
     * 1/d_e))}, a quadratic in the root of D.
     *
     * <p>Rule FORM-6.
     */
    public OptionalDouble longestRefilledJoint() {
        if (!(overspeed() > 0)) {
            return OptionalDouble.empty();
        }
        double perSpeed = 1 / entry.acceleration() + 1 / entry.deceleration();
        double u = overspeed();
        double gain = gainOnRamps();
        double strip = stripBeforeChange() - entry.startingLength();
        double drawn = (strip - speed() * (u * perSpeed - gain / u)) / (1 + speed() / u);
        if (drawn < gain) {
            double half = speed() * Math.sqrt(perSpeed / 2);
            double root = strip > 0 ? strip / (half + Math.sqrt(half * half + strip)) : 0;
            drawn = strip > 0 ? root * root : strip;
        }
        return OptionalDouble.of((drawn - stripDrawn(0)) / speed());
    }

    /** Time (s) from one coil change to the next while the process holds V: {@code L / V}. */
    public double coilRun() {
        return usable / speed();
    }
}
