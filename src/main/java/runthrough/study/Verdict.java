package runthrough.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.study.cause.CauseCounts;
import runthrough.study.cause.NamedCauses;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Summary;

/**
 * The answer, with the numbers that it rests on. Estimates are means over replications of what each gave; summaries pool the
 * coil changes of all replications.
 *
 * @param answer whether the target is met
 * @param target share of coil changes that should run through, in (0, 1]
 * @param chance whether anything in the line is random; if not, every replication is the same and the share is exact
 * @param shareRunThrough share of coil changes run through
 * @param resolution how many coil changes would decide
 * @param changes how many coil changes there were, and what came of them
 * @param causes what those that did not run through are attributed to
 * @param namedCauses the same by named element, with their starved stops and lost time; most coil changes first
 * @param spare margin or shortfall at the target; empty where entry and process are one strip
 * @param withoutStop the second target; where the process can slow or such a target is set
 * @param stoppages stops, and what they cost
 * @param passages what joint passages cost; where the line has them
 * @param breaks what joints that break in the process cost; where they do
 * @param output what comes out, and what is lost as scrap
 * @param joint how long the strip stands at the joiner
 * @param storage what the accumulator goes through; empty where entry and process are one strip
 * @param shifts coil changes by the shift in which they begin; empty without shifts
 */
public record Verdict(
        TargetStatus answer,
        double target,
        boolean chance,
        Estimate shareRunThrough,
        Resolution resolution,
        Changes changes,
        CauseCounts causes,
        List<NamedCauses.Count> namedCauses,
        Optional<Spare> spare,
        Optional<WithoutStop> withoutStop,
        Stoppages stoppages,
        Optional<Passages> passages,
        Optional<Breaks> breaks,
        Output output,
        Joint joint,
        Optional<Storage> storage,
        List<ShiftOutcome> shifts) {

    public Verdict {
        namedCauses = List.copyOf(namedCauses);
        shifts = List.copyOf(shifts);
    }

    /**
     * Coil changes of all replications, by what came of them.
     *
     * @param total of them
     * @param ranThrough the process held its rated speed
     * @param slowed the process ran slower on a low level
     * @param stopped the process stopped because strip was lacking
     */
    public record Changes(long total, long ranThrough, long slowed, long stopped) {

        /** How many did not run through. */
        public long failed() {
            return slowed + stopped;
        }
    }

    /**
     * How many coil changes it takes to tell.
     *
     * @param leastToShow so many would show the target met if every one of them ran through; with fewer it cannot be shown
     *     met. Empty when no number would do (a target of 1) and when nothing is random
     * @param toDecide so many would decide if the share stayed what it is; given only when the answer is undecided, and
     *     empty too when the share equals the target
     */
    public record Resolution(Optional<Long> leastToShow, Optional<Long> toDecide) {}

    /**
     * The margin (positive) or shortfall (negative) at a target: that of the coil change that is the last of those that may fail,
     * or the first where none may, see {@link runthrough.study.margin.StripMargin}.
     *
     * @param metres of strip above the level at which the target fails, with the process kept at its rated speed
     * @param seconds of joint cycle time that these metres are at the rated speed
     * @param speed by which the process could run faster, or has to run slower (m/s), through these joints on the strip held
     *     when they began, from the closed form. What a faster process does to refill and preparation is not in it
     */
    public record Spare(double metres, double seconds, double speed) {}

    /** Whether the targets that are set are met, both where there are two. */
    public boolean meetsAll() {
        return answer == TargetStatus.MEETS
                && withoutStop
                        .flatMap(WithoutStop::answer)
                        .map(second -> second == TargetStatus.MEETS)
                        .orElse(true);
    }

    /**
     * Coil changes without a stop: run through or slowed.
     *
     * @param share of coil changes
     * @param target share that should go without a stop, in (0, 1]; empty where none is set
     * @param answer whether the target is met, where one is set
     * @param spare margin or shortfall at the target, or where none is set at the target to run through; empty where entry and
     *     process are one strip
     * @param isSpeedHeld whether the closed form that {@code spare} as speed comes from holds at that speed
     */
    public record WithoutStop(
            Estimate share,
            OptionalDouble target,
            Optional<TargetStatus> answer,
            Optional<Spare> spare,
            boolean isSpeedHeld) {}

    /**
     * Stops, and what they cost. A shift is 8 h.
     *
     * @param starvedPerHundredChanges starved stops that belong to coil changes, per 100 of them
     * @param starvedPerShift all starved stops, per shift
     * @param slowingsPerShift how often the process slowed on a low level, per shift
     * @param downtimesPerShift stops of the process's own per shift
     * @param lostMetresPerShift metres not processed while starved, slowed or recovering from it, per shift (m)
     * @param lostTimePerShift the same as time at the rated speed, per shift (s)
     */
    public record Stoppages(
            Estimate starvedPerHundredChanges,
            Estimate starvedPerShift,
            Estimate slowingsPerShift,
            Estimate downtimesPerShift,
            Estimate lostMetresPerShift,
            Estimate lostTimePerShift) {}

    /**
     * What joints cost that pass the process at less than its rated speed. A shift is 8 h.
     *
     * @param lostMetresPerShift metres not processed for them, per shift (m)
     * @param share the same over metres at the rated speed, in [0, 1]
     */
    public record Passages(Estimate lostMetresPerShift, Estimate share) {}

    /**
     * What joints cost that break in the process. A shift is 8 h.
     *
     * @param perShift how many break per shift
     * @param lostMetresPerShift metres not processed because of that, recovery included, per shift (m)
     * @param lostTimePerShift the same as time at the rated speed, per shift (s)
     * @param repairPerShift how long they hold the process, per shift (s)
     */
    public record Breaks(
            Estimate perShift, Estimate lostMetresPerShift, Estimate lostTimePerShift, Estimate repairPerShift) {}

    /**
     * What comes out, and what is lost as scrap.
     *
     * @param speed good output over time (m/s): what was processed less what is scrap afterwards
     * @param massFlow the same by mass (kg/s)
     * @param grossSpeed metres processed over time (m/s)
     * @param grossMassFlow kilograms processed over time (kg/s)
     * @param utilisation metres processed over metres at the rated speed, in [0, 1]
     * @param goodShare yield: good output over what was processed, by mass, in [0, 1]
     * @param scrapMetresPerShift crops and strip scrapped at stops per 8 h (m)
     * @param scrapKilogramsPerShift the same by mass (kg)
     * @param scrapShare scrap over scrap and processed strip, by mass, in [0, 1]
     * @param changesPerShift coil changes per 8 h
     * @param duration simulated time of a replication that counts (s)
     * @param paidTimePerShift what people are paid for, people times seconds, per 8 h
     */
    public record Output(
            Estimate speed,
            Estimate massFlow,
            Estimate grossSpeed,
            Estimate grossMassFlow,
            Estimate utilisation,
            Estimate goodShare,
            Estimate scrapMetresPerShift,
            Estimate scrapKilogramsPerShift,
            Estimate scrapShare,
            Estimate changesPerShift,
            Estimate duration,
            Estimate paidTimePerShift) {}

    /**
     * The strip standing at the joiner.
     *
     * @param time the joint cycle time (s)
     * @param waiting the part of it that is waiting, for preparation or for people
     * @param forPreparation the part of that because preparation was not done
     * @param forPeople the part of that because people were not there
     */
    public record Joint(Summary time, Waiting waiting, Waiting forPreparation, Waiting forPeople) {}

    /**
     * Waiting with the strip standing.
     *
     * @param time of each coil change (s), zeros included
     * @param share of coil changes with any, in [0, 1]
     */
    public record Waiting(Summary time, Estimate share) {}

    /**
     * What the accumulator goes through.
     *
     * @param margin of each coil change above the stop level, the process at its rated speed (m), see {@link
     *     runthrough.study.margin.StripMargin}
     * @param marginToSlowing the same above the level at which the process slows (m); where it can slow
     * @param marginWithoutStop of each coil change to the target without a stop (m); where the process can slow
     * @param stripDrawn level at the start of each coil change minus lowest level (m)
     * @param refillTime from the release of the joint until the accumulator is full again (s), of those refilled; empty when
     *     none was
     * @param shareRefilled share of coil changes refilled before the next, in [0, 1]
     * @param meanLevel time-average level (m)
     * @param lowestLevel lowest level in any replication (m)
     * @param overtravel largest excess over the capacity in any replication (m), {@code >= 0}
     * @param overfull how often the level passed the capacity and its allowance, in all replications
     * @param stripBreaks how often the level fell below 0, in all replications; what follows one is not physical
     */
    public record Storage(
            Summary margin,
            Optional<Summary> marginToSlowing,
            Optional<Summary> marginWithoutStop,
            Summary stripDrawn,
            Optional<Summary> refillTime,
            Estimate shareRefilled,
            Estimate meanLevel,
            double lowestLevel,
            double overtravel,
            long overfull,
            long stripBreaks) {

        /** The margin of the target to run through: where the process can slow, that to slowing. */
        public Summary marginToRunThrough() {
            return marginToSlowing.orElse(margin);
        }
    }
}
