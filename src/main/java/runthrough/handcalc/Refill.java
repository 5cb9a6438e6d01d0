package runthrough.handcalc;

/**
 * Filling the accumulator again after a coil change, from the instant at which the entry is back at the process's speed.
 *
 * @param overspeed greatest speed above the process's (m/s), {@code > 0}
 * @param isHeld whether that speed is held; if not, the entry turns back before it reaches the speed it may run at
 * @param gainOnRamps strip gained while the entry speeds up and slows down again (m), {@code >= 0}
 * @param time from being at the process's speed until being there again with the accumulator full (s), {@code >= 0}
 * @param timeFromRelease the same from the release of the joint (s)
 * @param entryStrip strip that passes the joiner from the release of the joint until the accumulator is full (m)
 */
public record Refill(
        double overspeed, boolean isHeld, double gainOnRamps, double time, double timeFromRelease, double entryStrip) {}
