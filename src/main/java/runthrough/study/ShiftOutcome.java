package runthrough.study;

import java.util.Optional;
import runthrough.study.statistics.Estimate;

/**
 * What came of the coil changes that began in one shift, all of its turns and all replications together.
 *
 * @param name how the user calls the shift
 * @param changes that began in it, by what came of them
 * @param means of them; empty where none began in it
 * @param storage what the accumulator went through at them; empty where none began in it, or entry and process are one strip
 * @param starvedStops that belong to them, in all replications
 * @param lostTime that belongs to them, in all replications (s)
 * @param paidTime what people are paid for, people times seconds, in all replications
 */
public record ShiftOutcome(
        String name,
        Verdict.Changes changes,
        Optional<Means> means,
        Optional<Storage> storage,
        long starvedStops,
        double lostTime,
        double paidTime) {

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

    /**
     * What the accumulator went through at them.
     *
     * @param spare margin at the target to run through: what all but the share that may fail have at least
     * @param spareWithoutStop the same without a stop; where the process can slow, or that target is set
     * @param stripDrawn level at the start minus lowest level (m), mean
     * @param refillTime from the release of the joint until full again (s), mean of those refilled; empty when none was
     */
    public record Storage(
            Verdict.Spare spare,
            Optional<Verdict.Spare> spareWithoutStop,
            Estimate stripDrawn,
            Optional<Estimate> refillTime) {}
}
