package runthrough.handcalc;

import java.util.Optional;

/**
 * The accumulator, held against a coil change.
 *
 * @param stripDrawn D (m)
 * @param atRatedSpeed what is borne without a stop by a process that keeps its rated speed, even where it slows on a low level
 * @param withoutSlowing what is borne at the rated speed, the process not even slowing; empty where it cannot slow
 * @param withoutStop what is borne without a stop, the process slowing on a low level; empty where it cannot slow
 * @param refill filling up again; empty when the entry cannot run faster than the process
 * @param coilStrip strip of a coil before the next change against what passes until the accumulator is full (m); empty
 *     without refill. The margin runs at V with the accumulator full
 */
public record Storage(
        double stripDrawn,
        Bearable atRatedSpeed,
        Optional<Bearable> withoutSlowing,
        Optional<BearableSlowed> withoutStop,
        Optional<Refill> refill,
        Optional<Margin> coilStrip) {

    /** What is borne for the target to run through: where the process can slow, without slowing. */
    public Bearable toRunThrough() {
        return withoutSlowing.orElse(atRatedSpeed);
    }
}
