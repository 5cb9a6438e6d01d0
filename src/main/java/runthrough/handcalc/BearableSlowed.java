package runthrough.handcalc;

import java.util.Optional;

/**
 * What an accumulator bears without a stop, the process slowing on a low level. The closed form assumes that it slows while the entry
 * stands and has its slowed speed before the joint is released: each of the three is left out where that is not so of it. {@link
 * SlowingForms} hold the form.
 *
 * @param capacity C against what is needed (m); empty where the form does not hold at that capacity
 * @param jointCycleTime the longest that the accumulator bears against T (s); empty where the form does not hold of the line as it is
 * @param speed the fastest at which the accumulator bears T against V (m/s); empty where the form does not hold at that speed
 */
public record BearableSlowed(Optional<Margin> capacity, Optional<Margin> jointCycleTime, Optional<Margin> speed) {}
