package runthrough.simulation.records;

/**
 * One coil change; times in seconds of simulated time, levels and lengths in metres.
 *
 * @param number of the coil change, from 1
 * @param tailCoil index of the kind of the ending coil in {@code line.coils()}
 * @param headCoil index of the kind of the next coil in {@code line.coils()}
 * @param start T0: start of the coil change
 * @param tailStopped T1: the tail has stopped in the joiner
 * @param released T2: the joint is released
 * @param waiting for preparation (s), {@code >= 0}
 * @param passes how often the joint was made, {@code >= 1}
 * @param levelAtStart level at T0 (m)
 * @param lowestLevel lowest level (m) from T0 until matched again or the next T0
 * @param stopLevel level (m) at which the process, at the speed rated at T0, must stop; 0 for one-strip practices
 * @param outcome what it did to the process
 * @param starvedStops how many starved stops belong to it
 * @param lostMetres metres not processed while starved, slowed or recovering from it (m), {@code >= 0}
 * @param refillTime from T2 until matched (s); NaN when the next coil change came first or the run ended
 */
public record ChangeRecord(
        int number,
        int tailCoil,
        int headCoil,
        double start,
        double tailStopped,
        double released,
        double waiting,
        int passes,
        double levelAtStart,
        double lowestLevel,
        double stopLevel,
        Outcome outcome,
        int starvedStops,
        double lostMetres,
        double refillTime) {

    /** The joint cycle time (s): how long the strip stood at the joiner. */
    public double jointCycleTime() {
        return released - tailStopped;
    }

    /** Strip drawn from the accumulator (m). */
    public double stripDrawn() {
        return levelAtStart - lowestLevel;
    }

    /** The margin above the stop level (m); negative when the process had to stop. */
    public double margin() {
        return lowestLevel - stopLevel;
    }
}
