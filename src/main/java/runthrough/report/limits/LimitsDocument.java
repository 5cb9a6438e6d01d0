package runthrough.report.limits;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import runthrough.handcalc.Limit;
import runthrough.report.JsonShape;
import runthrough.report.lever.LeverShape;
import runthrough.study.Evaluation;
import runthrough.study.TargetStatus;
import runthrough.study.cause.Cause;
import runthrough.study.cause.Reason;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;
import runthrough.study.search.Crossing;

/** JSON of limits. */
final class LimitsDocument {
    private static final String VALUE = "In the unit that unit says.";

    private static final JsonShape<LineLimit> LIMIT = JsonShape.<LineLimit>named("limit")
            .word("what", "What is driven.", Lever.What.class, LineLimit::what)
            .text(
                    "unit",
                    "Unit of all values: m/s, s or m. Seconds are those on every pass of the join work, 0 now.",
                    limit -> unit(limit.what()))
            .flag(
                    "scaled_alike",
                    "Whether several values are behind it, all changed by the same factor.",
                    LineLimit::scaledAlike)
            .number("present", "Its value now. " + VALUE, LineLimit::present)
            .word(
                    "found",
                    "Whether the target is crossed within the range tried; missed-throughout: no value is enough; met-throughout:"
                            + " every value is.",
                    Crossing.Found.class,
                    limit -> limit.crossing().answered())
            .optionalNumber(
                    "value",
                    "The limit: the hardest value at which the target is shown to be met, or in a run too short to show it"
                            + " that at which the share seen meets it; null when no value is enough. With met-throughout it is"
                            + " the end of the range. " + VALUE,
                    limit -> limit.crossing().answer())
            .optionalNumber(
                    "seen_to_meet",
                    "The hardest value at which the share seen meets the target; null when none does. " + VALUE,
                    limit -> limit.crossing().value())
            .optionalNumber(
                    "low",
                    "Lower end of its 95 % interval; null where it is not known. " + VALUE,
                    limit -> limit.crossing().low())
            .optionalNumber(
                    "high",
                    "Upper end of its 95 % interval; null where it is not known. " + VALUE,
                    limit -> limit.crossing().high())
            .optionalNumber(
                    "shown_to_meet",
                    "The hardest value at which the target is shown to be met: the easy end of the interval. " + VALUE,
                    limit -> limit.crossing().sure())
            .number(
                    "tried_from",
                    "Lower end of the range tried. " + VALUE,
                    limit -> limit.crossing().from())
            .number(
                    "tried_to",
                    "Upper end of the range tried. " + VALUE,
                    limit -> limit.crossing().to())
            .word(
                    "found_in_hand_calculation",
                    "Whether by closed form the target is crossed within the range tried, in the same words.",
                    Crossing.Found.class,
                    LineLimit::closedForm)
            .optionalNumber(
                    "limit_of_hand_calculation",
                    "The limit by closed form with mean times; null where no value within the range is enough, or"
                            + " every one is. " + VALUE,
                    limit -> limit.neighbour()
                            .map(near -> OptionalDouble.of(near.value()))
                            .orElse(OptionalDouble.empty()))
            .optionalWord(
                    "limiting_factor_of_hand_calculation",
                    "What is overloaded just beyond it; null where the line's own check refuses what lies beyond.",
                    Limit.class,
                    limit -> limit.neighbour().flatMap(LineLimit.Neighbour::limitingFactor))
            .optionalWord(
                    "cause_beyond",
                    "What most coil changes that fail just beyond the limit are attributed to; null where none is known.",
                    Cause.class,
                    limit -> limit.beyond().stream()
                            .findFirst()
                            .map(most -> most.reason().cause()))
            .optionalText(
                    "element_beyond",
                    "The work element that it is named by, as list/name; null where it is named by none.",
                    limit -> limit.beyond().stream()
                            .findFirst()
                            .flatMap(most -> most.reason().element())
                            .map(Reason.Element::path))
            .optionalNumber(
                    "good_output_m_per_s",
                    "Good output at the limit; of the process speed, else null.",
                    limit -> LeverShape.output(limit.cost(), LeverAnswer.Cost::with))
            .optionalNumber(
                    "good_output_now_m_per_s",
                    "Good output of the line as it is, where that at the limit is given.",
                    limit -> LeverShape.output(limit.cost(), LeverAnswer.Cost::now))
            .words(
                    "differences",
                    "Why the limit is not that by closed form, the weightiest first; empty when they agree.",
                    LineLimit.Difference.class,
                    LineLimit::differences);

    private static final JsonShape<CountLimit.Tried> TRIED = JsonShape.<CountLimit.Tried>named("tried")
            .count("number", "How many.", CountLimit.Tried::count)
            .estimate(
                    "share_run_through",
                    "Share of coil changes run through.",
                    tried -> tried.evaluation().shareRunThrough());

    private static final JsonShape<CountLimit> COUNT = JsonShape.<CountLimit>named("count")
            .word("what", "What is counted.", CountLimit.What.class, CountLimit::what)
            .count(
                    "present",
                    "How many there are now. Of a crew that comes by shifts: in the largest shift; every other shift is tried"
                            + " with as many more or fewer people as that one, at least one.",
                    CountLimit::present)
            .optionalCount(
                    "smallest",
                    "Smallest number at which the share seen meets the target; null when no number that was"
                            + " tried is enough.",
                    limit -> whole(limit.smallest()))
            .optionalCount(
                    "shown_to_meet",
                    "Smallest number at which the target is shown to be met; null when none is.",
                    limit -> whole(limit.sure()))
            .optionalCount(
                    "limit_of_hand_calculation",
                    "Smallest number at which by closed form nothing is overloaded; null when something always is.",
                    limit -> whole(limit.closedForm()))
            .words(
                    "differences",
                    "Why the two are not the same; empty when they are.",
                    LineLimit.Difference.class,
                    CountLimit::differences)
            .list("tried", "Every number that was tried.", TRIED, CountLimit::tried);

    private static final JsonShape<Limits> PRESENT = JsonShape.<Limits>named("present")
            .word(
                    "answer",
                    "Whether the target is met.",
                    TargetStatus.class,
                    limits -> evaluation(limits).answer(limits.target()))
            .count(
                    "coil_changes",
                    "Coil changes that each value was tried with.",
                    limits -> evaluation(limits).changes())
            .estimate(
                    "share_run_through",
                    "Share of coil changes run through.",
                    limits -> evaluation(limits).shareRunThrough());

    static final JsonShape<Limits> SHAPE = JsonShape.<Limits>named("limits")
            .number("target", "Share of coil changes that should run through.", Limits::target)
            .flag(
                    "applicable",
                    "False where entry and process are one strip: every coil change stops it, and nothing has a limit.",
                    Limits::applicable)
            .optional(
                    "present",
                    "The line as it is; null where limits do not apply.",
                    PRESENT,
                    limits -> limits.present().map(any -> limits))
            .optionalCount(
                    "coil_changes_to_show_target",
                    "So many coil changes would show the target met if all of them ran through; with fewer it cannot be"
                            + " shown. Null where nothing is random.",
                    limits -> limits.present()
                            .flatMap(present ->
                                    present.resolution(limits.target()).leastToShow()))
            .list("limits", "Each number changed alone.", LIMIT, Limits::limits)
            .list("counts", "People and uncoilers.", COUNT, Limits::counts);

    private LimitsDocument() {}

    private static Evaluation evaluation(Limits limits) {
        return limits.present().orElseThrow();
    }

    private static Optional<Long> whole(OptionalInt number) {
        return number.isPresent() ? Optional.of((long) number.getAsInt()) : Optional.empty();
    }

    private static String unit(Lever.What what) {
        return switch (what) {
            case PROCESS_SPEED, ENTRY_TOP_SPEED -> "m/s";
            case JOINT_CYCLE_TIME, ELEMENT -> "s";
            case COIL_LENGTH, CAPACITY -> "m";
            case REJECTS, CREW, UNCOILERS -> "";
        };
    }
}
