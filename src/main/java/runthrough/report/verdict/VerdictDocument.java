package runthrough.report.verdict;

import java.util.List;
import java.util.Optional;
import runthrough.report.JsonShape;
import runthrough.report.lever.LeverShape;
import runthrough.report.lever.WayShape;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.lever.Levers;
import runthrough.study.statistics.RelativeHalfWidth;

/**
 * What JSON gives of a verdict; its parts are described by {@link ChangesDocument}, {@link OperationDocument}, {@link
 * CoilsDocument} and {@link HandDocument}.
 */
final class VerdictDocument {
    private static final JsonShape<RelativeHalfWidth> PRECISION = JsonShape.<RelativeHalfWidth>named("precision")
            .number("asked", "Half-width of the interval of the share that was asked for.", RelativeHalfWidth::asked)
            .optionalNumber(
                    "half_width",
                    "Half-width that there is; null where nothing is random.",
                    RelativeHalfWidth::halfWidth)
            .flag("reached", "Whether it is as narrow as asked for.", RelativeHalfWidth::reached)
            .count("replications_allowed", "Replications that were allowed.", RelativeHalfWidth::limit)
            .optionalCount(
                    "replications_that_would_do",
                    "About so many replications would do; null when reached, or when it is not known.",
                    precision -> precision.wouldDo().isPresent()
                            ? Optional.of((long) precision.wouldDo().getAsInt())
                            : Optional.empty());

    private static final JsonShape<Verdict.Resolution> RESOLUTION = JsonShape.<Verdict.Resolution>named("resolution")
            .optionalCount(
                    "least_to_show",
                    "So many coil changes would show the target met if every one of them ran through; null when no number"
                            + " would, and when nothing is random.",
                    Verdict.Resolution::leastToShow)
            .optionalCount(
                    "to_decide",
                    "So many would decide if the share stayed what it is; null unless undecided.",
                    Verdict.Resolution::toDecide);

    /** The figures of the headline. */
    private static final JsonShape<Verdict> HEADLINE = JsonShape.<Verdict>named("headline")
            .estimateInFull(
                    "share_run_through",
                    "Share of coil changes that the process ran through.",
                    Verdict::shareRunThrough)
            .in("resolution", "How many coil changes it takes to decide.", RESOLUTION, Verdict::resolution)
            .in(
                    "coil_changes",
                    "Coil changes of all replications, by what came of them.",
                    ChangesDocument.CHANGES,
                    Verdict::changes)
            .optional(
                    "margin_at_target",
                    "What all but the share 1 - target of coil changes have as margin; negative for a shortfall; null where"
                            + " entry and process are one strip.",
                    OperationDocument.MARGIN,
                    Verdict::spare)
            .optional(
                    "without_stop",
                    "The second target: coil changes run through or slowed; null where the process cannot slow and no such"
                            + " target is set.",
                    OperationDocument.WITHOUT_STOP,
                    Verdict::withoutStop)
            .in("stoppages", "Stops, and what they cost.", OperationDocument.STOPPAGES, Verdict::stoppages)
            .in("joint", "The strip standing at the joiner.", OperationDocument.JOINT, Verdict::joint)
            .in("output", "What comes out, and what is lost as scrap.", OperationDocument.OUTPUT, Verdict::output);

    /** What they come from, first thing after them. */
    private static final JsonShape<Verdict> CAUSES = JsonShape.<Verdict>named("causes_of_all")
            .in("causes", "Coil changes that did not run through, by cause.", ChangesDocument.CAUSES, Verdict::causes)
            .list(
                    "named_causes",
                    "The same by cause and named work element, those of most coil changes first.",
                    ChangesDocument.NAMED_CAUSE,
                    Verdict::namedCauses);

    /** What else the run shows. */
    private static final JsonShape<Verdict> DETAILS = JsonShape.<Verdict>named("details")
            .optional(
                    "joint_passages",
                    "What joints cost that pass the process at less than its rated speed; null where they do not.",
                    LossDocument.PASSAGES,
                    Verdict::passages)
            .optional(
                    "joint_breaks",
                    "What joints cost that break in the process; null where none can.",
                    LossDocument.BREAKS,
                    Verdict::breaks)
            .optional(
                    "storage",
                    "What the accumulator goes through; null where entry and process are one strip.",
                    OperationDocument.STORAGE,
                    Verdict::storage)
            .list(
                    "shifts",
                    "Coil changes by the shift in which they begin; empty without shifts. All values are in shifts.csv, too.",
                    LossDocument.SHIFT,
                    Verdict::shifts);

    static final JsonShape<RunThroughResult> SHAPE = JsonShape.<RunThroughResult>named("verdict")
            .word(
                    "answer",
                    "Whether the target is met: meets, misses, or undecided when the interval holds the target.",
                    TargetStatus.class,
                    result -> result.verdict().answer())
            .number(
                    "target",
                    "Share of coil changes that should run through.",
                    result -> result.verdict().target())
            .text(
                    "practice",
                    "join-with-accumulator, join-without-accumulator or rethread.",
                    result -> result.line().practice().words().replace(' ', '-'))
            .optional(
                    "precision",
                    "Whether the share is known as well as was asked for; null when no precision was asked for.",
                    PRECISION,
                    RunThroughResult::precision)
            .and(HEADLINE, RunThroughResult::verdict)
            .and(CAUSES, RunThroughResult::verdict)
            .list(
                    "worth_of_causes",
                    "What it would be worth to remove the causes of most coil changes, five at most: the line again without it,"
                            + " under the same random numbers. Empty where no coil change failed, or it was not asked.",
                    ChangesDocument.WORTH,
                    RunThroughResult::worths)
            .and(DETAILS, RunThroughResult::verdict)
            .list(
                    "levers",
                    "What would meet the targets, each change on its own. Empty where it was not asked.",
                    LeverShape.SHAPE,
                    result -> result.levers().map(Levers::answers).orElse(List.of()))
            .list(
                    "ways",
                    "Ways to meet the targets that are missed, of one change or two: target by target the cheapest first, then, without"
                            + " a cost, those that change least. Empty where it was not asked.",
                    WayShape.SHAPE,
                    result -> result.levers().map(Levers::ways).orElse(List.of()))
            .optional(
                    "coils",
                    "What came of the coil changes by coil and product; null where all coils are of one kind.",
                    CoilsDocument.SHAPE,
                    CoilTexts::of)
            .in(
                    "hand_calculation",
                    "The closed forms for the kind of coil that is hardest on the line, with mean times.",
                    HandDocument.SHAPE,
                    RunThroughResult::handCalculation);

    private VerdictDocument() {}
}
