package runthrough.simulation.records;

import java.util.Optional;

/**
 * One coil change that is over; times in seconds of simulated time, levels and lengths in metres.
 *
 * @param number of the coil change, from 1
 * @param shift in which T0 lies, by its place in the list of shifts, from 0; 0 without shifts
 * @param tailCoil index of the kind of the ending coil in {@code line.coils()}
 * @param headCoil index of the kind of the next coil in {@code line.coils()}
 * @param start T0: start of the coil change
 * @param tailStopped T1: the tail has stopped in the joiner
 * @param released T2: the joint is released
 * @param waitingForPreparation time with the strip standing and no work at the joint, because the next coil was not prepared or
 *     its preparation was being done again (s), {@code >= 0}
 * @param waitingForPeople the same because people lacked (s), {@code >= 0}
 * @param passes how often the joint was made, {@code >= 1}
 * @param levelAtStart level at T0 (m)
 * @param remainingAtStart strip of the ending coil that had yet to pass the joiner at T0 (m)
 * @param ratedSpeed in force at T0 (m/s)
 * @param lowestLevel lowest level (m) from T0 until matched again or the next T0
 * @param stopLevel level (m) at which the process, at the speed rated at T0, must stop; 0 for one-strip practices
 * @param outcome what it did to the process
 * @param starvedStops how many starved stops belong to it
 * @param lostMetres metres not processed while starved, slowed or recovering from it (m), {@code >= 0}
 * @param lostTime the same at the rated speed in force (s), {@code >= 0}
 * @param refillTime from T2 until matched (s); NaN when the next coil change came first or the run ended
 * @param work what the cause is found from; where it did not run through and there is an accumulator
 */
public record ChangeRecord(
        int number,
        int shift,
        int tailCoil,
        int headCoil,
        double start,
        double tailStopped,
        double released,
        double waitingForPreparation,
        double waitingForPeople,
        int passes,
        double levelAtStart,
        double remainingAtStart,
        double ratedSpeed,
        double lowestLevel,
        double stopLevel,
        Outcome outcome,
        int starvedStops,
        double lostMetres,
        double lostTime,
        double refillTime,
        Optional<WorkDone> work)
        implements ChangeFacts {

    /** What {@code change} is now. */
    public static ChangeRecord of(ChangeFacts change) {
        return new ChangeRecord(
                change.number(),
                change.shift(),
                change.tailCoil(),
                change.headCoil(),
                change.start(),
                change.tailStopped(),
                change.released(),
                change.waitingForPreparation(),
                change.waitingForPeople(),
                change.passes(),
                change.levelAtStart(),
                change.remainingAtStart(),
                change.ratedSpeed(),
                change.lowestLevel(),
                change.stopLevel(),
                change.outcome(),
                change.starvedStops(),
                change.lostMetres(),
                change.lostTime(),
                change.refillTime(),
                change.work());
    }
}
