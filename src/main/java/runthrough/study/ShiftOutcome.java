package runthrough.study;

import java.util.Optional;
import runthrough.study.statistics.Estimate;

/**
 * What came of the coil changes that began in one shift, all of its turns and all replications together.
 *
 * <p>Rule CREW-17.
 *
 * @param name how the user calls the shift
 * @param changes that began in it, by what came of them
 * @param means of them; empty where none began in it
 * @param lostTime that belongs to them, in all replications (s)
 * @param paidTime what people are paid for, people times seconds, in all replications
 */
public record ShiftOutcome(
        String name, Verdict.Changes changes, Optional<Means> means, double lostTime, double paidTime) {

    /**
     * Means over the replications in which a coil change began in the shift.
     *
     * @param shareRunThrough share of coil changes run through
     * @param jointCycleTime how long the strip stands at the joiner (s)
     * @param waitingForPreparation the part of it that is waiting for preparation (s)
     * @param waitingForPeople the part of it that is waiting for people (s)
     */
    public record Means(
            Estimate shareRunThrough,
            Estimate jointCycleTime,
            Estimate waitingForPreparation,
            Estimate waitingForPeople) {}
}
