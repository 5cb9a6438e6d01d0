package runthrough.report.verdict;

import runthrough.report.JsonShape;
import runthrough.study.ShiftOutcome;
import runthrough.study.Verdict;

/** What JSON gives of joints that pass or break in the process, and of the shifts. */
final class LossDocument {
    static final JsonShape<Verdict.Passages> PASSAGES = JsonShape.<Verdict.Passages>named("passages")
            .estimateInFull("lost_m_per_8_h", "Strip not run for them.", Verdict.Passages::lostMetresPerShift)
            .estimateInFull("share", "The same over strip at the rated speed.", Verdict.Passages::share);

    static final JsonShape<Verdict.Breaks> BREAKS = JsonShape.<Verdict.Breaks>named("breaks")
            .estimateInFull("per_8_h", "How many.", Verdict.Breaks::perShift)
            .estimateInFull(
                    "lost_m_per_8_h",
                    "Strip not run because of them, until the process has its rated speed again.",
                    Verdict.Breaks::lostMetresPerShift)
            .estimateInFull("lost_s_per_8_h", "The same as time at the rated speed.", Verdict.Breaks::lostTimePerShift)
            .estimateInFull(
                    "repair_s_per_8_h",
                    "How long they hold the process, from the break until it is repaired.",
                    Verdict.Breaks::repairPerShift);

    private static final JsonShape<ShiftOutcome.Means> MEANS = JsonShape.<ShiftOutcome.Means>named("shift_means")
            .estimateInFull("share_run_through", "Share that ran through.", ShiftOutcome.Means::shareRunThrough)
            .estimateInFull("joint_cycle_time_s", "How long the strip stands.", ShiftOutcome.Means::jointCycleTime)
            .estimateInFull(
                    "waiting_for_preparation_s",
                    "The part of it that is waiting for preparation.",
                    ShiftOutcome.Means::waitingForPreparation)
            .estimateInFull(
                    "waiting_for_people_s",
                    "The part of it that is waiting for people.",
                    ShiftOutcome.Means::waitingForPeople);

    private static final JsonShape<ShiftOutcome.Storage> STORAGE = JsonShape.<ShiftOutcome.Storage>named(
                    "shift_storage")
            .in(
                    "margin_at_target",
                    "What all but the share 1 - target of them have as margin; negative for a shortfall.",
                    OperationDocument.MARGIN,
                    ShiftOutcome.Storage::spare)
            .optional(
                    "margin_without_stop_at_target",
                    "The same without a stop; null where the process cannot slow and no such target is set.",
                    OperationDocument.MARGIN,
                    ShiftOutcome.Storage::spareWithoutStop)
            .estimateInFull(
                    "strip_drawn_m", "Level at the start minus lowest level, mean.", ShiftOutcome.Storage::stripDrawn)
            .optionalEstimate(
                    "refill_time_s",
                    "From the release of the joint until full again, mean; null when that never came.",
                    ShiftOutcome.Storage::refillTime);

    static final JsonShape<ShiftOutcome> SHIFT = JsonShape.<ShiftOutcome>named("shift")
            .text("name", "Its name.", ShiftOutcome::name)
            .in(
                    "coil_changes",
                    "Coil changes that began in it, of all replications, by what came of them.",
                    ChangesDocument.CHANGES,
                    ShiftOutcome::changes)
            .optional("means", "Means of them; null where none began in it.", MEANS, ShiftOutcome::means)
            .optional(
                    "storage",
                    "What the accumulator went through at them; null where none began in it, or entry and process are one"
                            + " strip.",
                    STORAGE,
                    ShiftOutcome::storage)
            .count(
                    "starved_stops",
                    "Starved stops that belong to them, in all replications.",
                    ShiftOutcome::starvedStops)
            .number("lost_s", "Lost time that belongs to them, in all replications.", ShiftOutcome::lostTime)
            .number(
                    "paid_s",
                    "What people are paid for, people times seconds, in all replications.",
                    ShiftOutcome::paidTime);

    private LossDocument() {}
}
