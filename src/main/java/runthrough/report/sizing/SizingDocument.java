package runthrough.report.sizing;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import runthrough.handcalc.BearableSlowed;
import runthrough.handcalc.Storage;
import runthrough.plant.StorageForm;
import runthrough.plant.StorageForm.Adjustable;
import runthrough.quantity.Kind;
import runthrough.report.JsonShape;
import runthrough.study.cause.Cause;
import runthrough.study.cause.Reason;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Remedy;
import runthrough.study.sizing.Size;
import runthrough.study.sizing.Sizing;
import runthrough.study.statistics.RelativeHalfWidth;

/** JSON of a sizing. */
final class SizingDocument {
    private static final JsonShape<Size> SIZE = JsonShape.<Size>named("size")
            .number("capacity_m", "Usable capacity.", Size::capacity)
            .word(
                    "set_by",
                    "What is adjusted to give this capacity.",
                    StorageForm.Measure.class,
                    size -> adjustable(size).measure())
            .number(
                    "setting_m",
                    "Stroke, sag, diameter or capacity, as set_by says.",
                    size -> adjustable(size).metres());

    private static final JsonShape<Sizing.Point> POINT = JsonShape.<Sizing.Point>named("point")
            .and(SIZE, Sizing.Point::size)
            .optionalEstimate(
                    "share_run_through",
                    "Share of coil changes run through; null where the line's own check refuses the capacity.",
                    Sizing.Point::share)
            .optionalEstimate(
                    "lost_time_per_year_s",
                    "Time that starved stops cost in a year; null where the line's own check refuses the capacity.",
                    Sizing.Point::lostTime)
            .number(
                    "greatest_share_so_far",
                    "Greatest share seen at this or any smaller capacity.",
                    Sizing.Point::envelope);

    static final JsonShape<RelativeHalfWidth> PRECISION = JsonShape.<RelativeHalfWidth>named("precision")
            .number("asked", "Half-width of the interval asked for, as a part of the value.", RelativeHalfWidth::asked)
            .optionalNumber(
                    "half_width",
                    "Half-width that there is; null where the interval lacks an end, or nothing is random.",
                    RelativeHalfWidth::halfWidth)
            .flag("reached", "Whether it is as narrow as asked for.", RelativeHalfWidth::reached)
            .optionalNumber(
                    "replications_that_would_do",
                    "About so many replications would do; null when reached, or when that is not known.",
                    precision -> precision.wouldDo().isPresent()
                            ? OptionalDouble.of(precision.wouldDo().getAsInt())
                            : OptionalDouble.empty());

    private static final JsonShape<Remedy> REMEDY = JsonShape.<Remedy>named("remedy")
            .word("change", "What is changed.", Remedy.What.class, Remedy::what)
            .optionalText(
                    "element",
                    "The work element that is shortened, as list/name; null for other changes.",
                    remedy -> remedy.element().map(Reason.Element::path))
            .optionalText("shift", "The shift whose crew it is; null for other changes.", Remedy::shift)
            .text(
                    "unit",
                    "Unit of the values: m/s, s, 1 for a share, or nothing for a number of people or uncoilers."
                            + " joint-cycle-time is seconds on every pass of the join work, those off it negative.",
                    SizingDocument::unit)
            .optionalNumber("now", "Present value; null when there is no limit.", remedy -> finite(remedy.now()))
            .optionalNumber(
                    "needed",
                    "The value nearest to the present one with which some capacity is enough; null when none does.",
                    Remedy::needed)
            .number("tried", "The furthest value that was tried.", Remedy::tried);

    private static final JsonShape<Sizing.NoneEnough> NONE = JsonShape.<Sizing.NoneEnough>named("none_is_enough")
            .word(
                    "cause",
                    "What makes it so: a wait without which some capacity would be enough, or accumulator-not-full, where the"
                            + " entry brings less in the long run than the process uses.",
                    Cause.class,
                    Sizing.NoneEnough::cause)
            .estimate(
                    "shortfall_growth_per_change_m",
                    "By how much the shortfall of strip grows from one coil change to the next.",
                    Sizing.NoneEnough::growth)
            .list("remedies", "Changes of the line, each on its own.", REMEDY, Sizing.NoneEnough::remedies);

    /** So many coil changes of one cause. */
    private record Failures(Cause cause, long count) {}

    private static final JsonShape<Failures> FAILURES = JsonShape.<Failures>named("failures")
            .word("cause", "Why they did not run through.", Cause.class, Failures::cause)
            .count("coil_changes", "How many they are.", Failures::count);

    static final JsonShape<Sizing> SHAPE = JsonShape.<Sizing>named("sizing")
            .word("answer", "What came of it.", Sizing.Answer.class, Sizing::answer)
            .number("target", "Share of coil changes that should run through.", Sizing::target)
            .count("replications_run", "Replications that each capacity was tried with.", Sizing::replications)
            .optional(
                    "smallest",
                    "The smallest accumulator at which the target is shown to be met; in a run too short to show it, at which the"
                            + " share seen meets it.",
                    SIZE,
                    Sizing::smallest)
            .optional(
                    "interval_low",
                    "Lower end of its 95 % interval; null where the run is too short for it.",
                    SIZE,
                    Sizing::possible)
            .optional(
                    "interval_high",
                    "Upper end, at which the target is shown to be met; null where the run is too short for that.",
                    SIZE,
                    Sizing::sure)
            .optionalNumber(
                    "in_whole_strands_m",
                    "The smallest capacity in whole strands of the present stroke; null where there are none.",
                    sizing -> sizing.strands().map(Crossing::answer).orElse(OptionalDouble.empty()))
            .optionalNumber(
                    "without_stop_m",
                    "The smallest capacity that meets the target without a stop, in whole strands where there are some; null"
                            + " where the scenario sets no such target, or no capacity is enough.",
                    sizing -> sizing.withoutStop().map(Crossing::answer).orElse(OptionalDouble.empty()))
            .optional("present", "The accumulator as it is.", POINT, Sizing::present)
            .list(
                    "failures",
                    "Coil changes that do not run through with the accumulator as it is, by cause; those of the replications of"
                            + " the scenario.",
                    FAILURES,
                    SizingDocument::failures)
            .optional("precision", "Whether the interval is as narrow as asked for.", PRECISION, Sizing::interval)
            .optionalCount(
                    "coil_changes_to_show_target",
                    "So many coil changes would show the target met if all of them ran through; with fewer it cannot be"
                            + " shown. Null where nothing is random.",
                    sizing -> sizing.resolution().leastToShow())
            .optionalNumber(
                    "capacity_by_closed_form_m",
                    "Capacity needed for one joint of mean time from a full accumulator.",
                    sizing -> sizing.handCalculation()
                            .storage()
                            .map(storage -> OptionalDouble.of(
                                    storage.toRunThrough().capacity().needed()))
                            .orElse(OptionalDouble.empty()))
            .optionalNumber(
                    "without_stop_by_closed_form_m",
                    "Capacity needed for the same joint so that the process slows and does not stop; null where it cannot slow,"
                            + " or no closed form holds.",
                    sizing -> sizing.handCalculation()
                            .storage()
                            .flatMap(Storage::withoutStop)
                            .flatMap(BearableSlowed::capacity)
                            .map(margin -> OptionalDouble.of(margin.needed()))
                            .orElse(OptionalDouble.empty()))
            .list("curve", "Share against capacity, smallest capacity first.", POINT, Sizing::curve)
            .optional("none_is_enough", "Why no capacity is enough, if none is.", NONE, Sizing::noneEnough);

    private SizingDocument() {}

    private static Adjustable adjustable(Size size) {
        return size.form().adjustable().orElseThrow();
    }

    private static List<Failures> failures(Sizing sizing) {
        return Arrays.stream(Cause.values())
                .map(cause -> new Failures(cause, sizing.causes().count(cause)))
                .filter(failures -> failures.count() > 0)
                .toList();
    }

    private static String unit(Remedy remedy) {
        return remedy.what()
                .kind()
                .map(kind -> kind == Kind.SPEED ? "m/s" : kind == Kind.SHARE ? "1" : "s")
                .orElse("");
    }

    private static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
