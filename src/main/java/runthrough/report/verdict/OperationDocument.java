package runthrough.report.verdict;

import java.util.OptionalDouble;
import runthrough.report.JsonShape;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.statistics.Summary;

/** JSON of how a line runs: margin, stops, output, joints and the accumulator. */
final class OperationDocument {
    static final JsonShape<Verdict.Spare> MARGIN = JsonShape.<Verdict.Spare>named("margin")
            .optionalNumber(
                    "strip_m",
                    "Strip above the level at which the target fails, the process at its rated speed.",
                    margin -> known(margin.metres()))
            .optionalNumber("joint_cycle_time_s", "The same as joint cycle time.", margin -> known(margin.seconds()))
            .optionalNumber(
                    "process_speed_m_per_s",
                    "By how much the process could run faster, or has to run slower.",
                    margin -> known(margin.speed()));

    static final JsonShape<Verdict.WithoutStop> WITHOUT_STOP = JsonShape.<Verdict.WithoutStop>named("without_stop")
            .estimateInFull("share", "Share of coil changes without a stop.", Verdict.WithoutStop::share)
            .optionalNumber(
                    "target",
                    "Share that should go without a stop; null where none is set.",
                    Verdict.WithoutStop::target)
            .optionalWord(
                    "answer",
                    "Whether the target is met; null where none is set.",
                    TargetStatus.class,
                    Verdict.WithoutStop::answer)
            .optional(
                    "margin",
                    "What all but the share 1 - target have as margin; negative for a shortfall.",
                    MARGIN,
                    Verdict.WithoutStop::spare)
            .flag(
                    "margin_speed_holds",
                    "Whether the closed form that gives the process speed of margin holds at that speed (rule FORM-13); else"
                            + " the speed is only what the formula gives.",
                    Verdict.WithoutStop::isSpeedHeld);

    static final JsonShape<Verdict.Stoppages> STOPPAGES = JsonShape.<Verdict.Stoppages>named("stoppages")
            .estimateInFull(
                    "starved_per_100_coil_changes", "Starved stops.", Verdict.Stoppages::starvedPerHundredChanges)
            .estimateInFull("starved_per_8_h", "Starved stops.", Verdict.Stoppages::starvedPerShift)
            .estimateInFull("slowings_per_8_h", "Slowings on a low level.", Verdict.Stoppages::slowingsPerShift)
            .estimateInFull("downtime_per_8_h", "Stops of process downtime.", Verdict.Stoppages::downtimesPerShift)
            .estimateInFull("lost_m_per_8_h", "Strip not run, starved.", Verdict.Stoppages::lostMetresPerShift)
            .estimateInFull(
                    "lost_s_per_8_h", "The same as time at the rated speed.", Verdict.Stoppages::lostTimePerShift);

    static final JsonShape<Verdict.Output> OUTPUT = JsonShape.<Verdict.Output>named("output")
            .estimateInFull(
                    "speed_m_per_s",
                    "Good output over time: strip processed less what is scrap afterwards.",
                    Verdict.Output::speed)
            .estimateInFull("mass_flow_kg_per_s", "The same by mass.", Verdict.Output::massFlow)
            .estimateInFull("gross_speed_m_per_s", "Strip processed over time.", Verdict.Output::grossSpeed)
            .estimateInFull("gross_mass_flow_kg_per_s", "Mass processed over time.", Verdict.Output::grossMassFlow)
            .estimateInFull("yield", "Good output over what was processed, by mass.", Verdict.Output::goodShare)
            .estimateInFull(
                    "utilisation", "Strip processed over strip at the rated speed.", Verdict.Output::utilisation)
            .estimateInFull("scrap_m_per_8_h", "Crops and scrapped strip.", Verdict.Output::scrapMetresPerShift)
            .estimateInFull("scrap_kg_per_8_h", "The same by mass.", Verdict.Output::scrapKilogramsPerShift)
            .estimateInFull("scrap_share", "Scrap over scrap and good output, by mass.", Verdict.Output::scrapShare)
            .estimateInFull("coil_changes_per_8_h", "Coil changes.", Verdict.Output::changesPerShift)
            .estimateInFull(
                    "paid_s_per_8_h",
                    "What people are paid for, people times seconds, breaks included.",
                    Verdict.Output::paidTimePerShift)
            .estimateInFull("counted_time_s", "Simulated time of a replication that counts.", Verdict.Output::duration);

    private static final JsonShape<Summary> DISTRIBUTION = JsonShape.<Summary>named("distribution")
            .count("count", "Coil changes that gave a value.", Summary::count)
            .estimateInFull("mean", "Mean, each replication giving its own.", Summary::mean)
            .optionalNumber("standard_deviation", "Standard deviation between coil changes.", all -> known(all.sd()))
            .optionalNumber("least", "Smallest value.", all -> known(all.least()))
            .optionalNumber("p0_5", "0.5th percentile.", all -> known(all.p005()))
            .optionalNumber("p1", "1st percentile.", all -> known(all.p01()))
            .optionalNumber("p5", "5th percentile.", all -> known(all.p05()))
            .optionalNumber("p50", "Median.", all -> known(all.p50()))
            .optionalNumber("p90", "90th percentile.", all -> known(all.p90()))
            .optionalNumber("p95", "95th percentile.", all -> known(all.p95()))
            .optionalNumber("p99", "99th percentile.", all -> known(all.p99()))
            .optionalNumber("p99_5", "99.5th percentile.", all -> known(all.p995()))
            .optionalNumber("greatest", "Largest value.", all -> known(all.greatest()));

    static final JsonShape<Verdict.Joint> JOINT = JsonShape.<Verdict.Joint>named("joint")
            .in("cycle_time_s", "How long the strip stands.", DISTRIBUTION, Verdict.Joint::time)
            .in(
                    "waiting_s",
                    "The part of it that is waiting, for preparation or for people.",
                    DISTRIBUTION,
                    joint -> joint.waiting().time())
            .in(
                    "waiting_for_preparation_s",
                    "The part of that that is waiting for preparation.",
                    DISTRIBUTION,
                    joint -> joint.forPreparation().time())
            .in(
                    "waiting_for_people_s",
                    "The part of that that is waiting for people.",
                    DISTRIBUTION,
                    joint -> joint.forPeople().time())
            .estimateInFull(
                    "share_waiting",
                    "Share of coil changes with any waiting.",
                    joint -> joint.waiting().share())
            .estimateInFull(
                    "share_waiting_for_preparation",
                    "Share of coil changes with any waiting for preparation.",
                    joint -> joint.forPreparation().share())
            .estimateInFull(
                    "share_waiting_for_people",
                    "Share of coil changes with any waiting for people.",
                    joint -> joint.forPeople().share());

    static final JsonShape<Verdict.Storage> STORAGE = JsonShape.<Verdict.Storage>named("storage")
            .in(
                    "margin_m",
                    "What would be left above the stop level, had the process kept its rated speed; negative for what would"
                            + " lack.",
                    DISTRIBUTION,
                    Verdict.Storage::margin)
            .optional(
                    "margin_to_slowing_m",
                    "The same above the level at which the process slows; null where it cannot slow.",
                    DISTRIBUTION,
                    Verdict.Storage::marginToSlowing)
            .optional(
                    "margin_without_stop_m",
                    "Lowest level above the stop level with the process slowing as it does; null where it cannot slow.",
                    DISTRIBUTION,
                    Verdict.Storage::marginWithoutStop)
            .in("strip_drawn_m", "Level at the start minus lowest level.", DISTRIBUTION, Verdict.Storage::stripDrawn)
            .optional(
                    "refill_time_s",
                    "From the release of the joint until full again; null when that never came.",
                    DISTRIBUTION,
                    Verdict.Storage::refillTime)
            .estimateInFull(
                    "share_refilled", "Share of coil changes refilled before the next.", Verdict.Storage::shareRefilled)
            .estimateInFull("mean_level_m", "Time-average level.", Verdict.Storage::meanLevel)
            .optionalNumber(
                    "lowest_level_m", "Lowest level in any replication.", storage -> known(storage.lowestLevel()))
            .optionalNumber("overtravel_m", "Largest excess over the capacity.", storage -> known(storage.overtravel()))
            .count("overfull", "How often the level passed the capacity and its allowance.", Verdict.Storage::overfull)
            .count(
                    "strip_breaks",
                    "How often the level fell below 0; what follows one is not physical.",
                    Verdict.Storage::stripBreaks);

    private static OptionalDouble known(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private OperationDocument() {}
}
