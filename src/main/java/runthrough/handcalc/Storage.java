package runthrough.handcalc;

import java.util.Optional;

/**
 * The accumulator, held against a coil change.
 *
 * @param stripDrawn D (m)
 * @param capacity C against what is needed so that the process need not stop (m)
 * @param withoutSlowing C against what is needed so that it need not slow either (m); empty where it does not slow
 * @param jointCycleTime the longest that the accumulator bears against T (s)
 * @param speed the fastest at which the accumulator bears T against V (m/s)
 * @param refill filling up again; empty when the entry cannot run faster than the process
 * @param coilStrip strip of a coil before the next change against what passes until the accumulator is full (m); empty
 *     without refill. The margin runs at V with the accumulator full
 */
public record Storage(
        double stripDrawn,
        Margin capacity,
        Optional<Margin> withoutSlowing,
        Margin jointCycleTime,
        Margin speed,
        Optional<Refill> refill,
        Optional<Margin> coilStrip) {}
