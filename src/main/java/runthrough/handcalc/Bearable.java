package runthrough.handcalc;

/**
 * What an accumulator bears at a coil change, held against what there is, for one target of a process that slows on a low level.
 *
 * @param capacity C against what is needed (m)
 * @param jointCycleTime the longest that the accumulator bears against T (s)
 * @param speed the fastest at which the accumulator bears T against V (m/s)
 */
public record Bearable(Margin capacity, Margin jointCycleTime, Margin speed) {}
