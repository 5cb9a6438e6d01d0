package runthrough.handcalc;

import java.util.Optional;

/**
 * The accumulator, held against a coil change. Where the process slows on a low level, capacity, joint cycle time and speed are
 * what they were if it did not.
 *
 * <p>Rules FORM-7, FORM-13.
 *
 * @param stripDrawn D (m)
 * @param capacity C against what is needed so that the process need not stop (m)
 * @param withoutSlowing what is borne at the rated speed, the process not even slowing; empty where it cannot slow
 * @param withoutStop what is borne without a stop, the process slowing on a low level; empty where it cannot slow, and where the
 *     closed form does not hold
 * @param jointCycleTime the longest that the accumulator bears against T (s)
 * @param speed the fastest at which the accumulator bears T against V (m/s)
 * @param refill filling up again; empty when the entry cannot run faster than the process
 * @param coilStrip strip of a coil before the next change against what passes until the accumulator is full (m); empty
 *     without refill. The margin runs at V with the accumulator full
 */
public record Storage(
        double stripDrawn,
        Margin capacity,
        Optional<Bearable> withoutSlowing,
        Optional<BearableSlowed> withoutStop,
        Margin jointCycleTime,
        Margin speed,
        Optional<Refill> refill,
        Optional<Margin> coilStrip) {

    /** What is borne for the target to run through: where the process can slow, without slowing. Rules FORM-2, FORM-7. */
    public Bearable toRunThrough() {
        return withoutSlowing.orElseGet(() -> new Bearable(capacity, jointCycleTime, speed));
    }
}
