package runthrough.report.sensitivity;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import runthrough.report.JsonShape;
import runthrough.study.cause.Cause;
import runthrough.study.cause.NamedCauses;
import runthrough.study.cause.Reason;
import runthrough.study.sensitivity.Change;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.Sensitivity;
import runthrough.study.sensitivity.SwingEffect;
import runthrough.study.sensitivity.SwingEffect.AtEnd;
import runthrough.study.sensitivity.Swings;
import runthrough.study.sensitivity.VarianceShares;
import runthrough.study.sensitivity.VarianceShares.Share;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** JSON of a sensitivity study. */
final class SensitivityDocument {

    /** By what margins and lost times are measured. */
    private enum Yardstick {
        MARGIN_AT_TARGET,
        MEAN_MARGIN,
        MEAN_LOST_TIME
    }

    private static final JsonShape<Change> CHANGE = JsonShape.<Change>named("change")
            .estimate(
                    "by",
                    "By how much, compared under the same random numbers: m of margin, s of lost time, or a share.",
                    Change::by)
            .flag("shown", "Whether it is shown to have changed at all, all comparisons made at once.", Change::shown);

    private static final JsonShape<AtEnd> END = JsonShape.<AtEnd>named("end")
            .text("value", "Value of the input in its unit.", at -> at.end().text())
            .number("value_si", "The same in SI.", at -> at.end().value())
            .flag(
                    "possible",
                    "Whether the line can be run so.",
                    at -> at.strip().isPresent())
            .text(
                    "note",
                    "Why not, or why it is nearer than usual; may be empty.",
                    at -> at.end().note())
            .optional("strip_change", "Change of the margin (m) or the lost time (s).", CHANGE, AtEnd::strip)
            .optional("share_change", "Change of the share run through.", CHANGE, AtEnd::share);

    private static final JsonShape<SwingEffect> INPUT = JsonShape.<SwingEffect>named("input")
            .text("path", "By which it is named.", effect -> effect.swing().path())
            .text("as_it_is", "Its present value.", effect -> effect.swing().present())
            .flag(
                    "range_stated",
                    "Whether the user stated its range.",
                    effect -> effect.swing().stated())
            .in("low", "At the lower end of its range.", END, SwingEffect::low)
            .in("high", "At the higher end.", END, SwingEffect::high);

    private static final JsonShape<Estimate> INDEX = JsonShape.<Estimate>named("index")
            .number("mean", "The index; 0 to 1 but for the error of estimation.", Estimate::mean)
            .optionalNumber("low", "Lower end of its 95 % interval; null where none is given.", end(Interval::low))
            .optionalNumber("high", "Upper end.", end(Interval::high));

    private static final JsonShape<Share> SOURCE = JsonShape.<Share>named("source")
            .text("source", "What is random.", share -> share.source().label())
            .in(
                    "first_order",
                    "Share of the variance that it carries by itself.",
                    INDEX,
                    share -> share.index().first().within(0, 1))
            .flag(
                    "first_order_shown",
                    "Whether that is shown to be more than none.",
                    share -> share.index().isFirstShown())
            .in(
                    "total",
                    "Share that it carries by itself and together with others.",
                    INDEX,
                    share -> share.index().total().within(0, 1))
            .flag(
                    "total_shown",
                    "Whether that is shown to be more than none.",
                    share -> share.index().isShown());

    private static final JsonShape<VarianceShares> RANDOMNESS = JsonShape.<VarianceShares>named("randomness")
            .word("measure", "Whose variance it is.", ChangeMeasure.class, VarianceShares::measure)
            .number("mean", "Mean over coil changes: m, s, or a share.", VarianceShares::mean)
            .number("sd", "Standard deviation at a coil change, in the same unit.", VarianceShares::sd)
            .optional(
                    "sum_of_first_orders",
                    "Sum of all first-order indices; null where there is no variance.",
                    INDEX,
                    shares -> Optional.of(shares.firstOrders().within(0, 1)).filter(any -> shares.varies()))
            .flag(
                    "acting_together_shown",
                    "Whether it is shown that sources act together: the sum is less than 1.",
                    VarianceShares::isTogetherShown)
            .list("sources", "The one with the greatest total index first.", SOURCE, VarianceShares::sources);

    private static final JsonShape<NamedCauses.Count> CAUSE = JsonShape.<NamedCauses.Count>named("named_cause")
            .word("cause", "The cause.", Cause.class, count -> count.reason().cause())
            .optionalText(
                    "element",
                    "The work element that it is named by, as list/name; null where it is named by none.",
                    count -> count.reason().element().map(Reason.Element::path))
            .count("coil_changes", "Coil changes that did not run through because of it.", NamedCauses.Count::changes);

    static final JsonShape<Sensitivity> SHAPE = JsonShape.<Sensitivity>named("sensitivity")
            .number("target", "Share of coil changes that should run through.", Sensitivity::target)
            .word(
                    "strip_measure",
                    "What is moved beside the share: the margin that all but the allowed share of coil changes have, or the"
                            + " mean margin where the run is too short for that, or the lost time of a coil change.",
                    Yardstick.class,
                    sensitivity -> yardstick(sensitivity.swings()))
            .estimate(
                    "strip",
                    "That measure for the line as it is: m, or s of lost time.",
                    sensitivity -> sensitivity.swings().strip())
            .estimate(
                    "share_run_through",
                    "Share of coil changes run through, for the line as it is.",
                    sensitivity -> sensitivity.swings().share())
            .list(
                    "inputs",
                    "Inputs moved one at a time.",
                    INPUT,
                    sensitivity -> sensitivity.swings().effects())
            .list(
                    "causes",
                    "What the coil changes that did not run through are attributed to, for the line as it is: those of the"
                            + " verdict.",
                    CAUSE,
                    Sensitivity::causes)
            .count("samples", "Replications of each kind behind the shares of variance.", Sensitivity::samples)
            .count("sample_changes", "Coil changes in each of these.", Sensitivity::sampleChanges)
            .list(
                    "randomness",
                    "Which sources of chance carry the variance, for each measure; none where nothing is random.",
                    RANDOMNESS,
                    Sensitivity::randomness);

    private SensitivityDocument() {}

    private static Yardstick yardstick(Swings swings) {
        if (swings.measure() == ChangeMeasure.LOST_TIME) {
            return Yardstick.MEAN_LOST_TIME;
        }
        return swings.atTarget() ? Yardstick.MARGIN_AT_TARGET : Yardstick.MEAN_MARGIN;
    }

    private static Function<Estimate, OptionalDouble> end(ToDoubleFunction<Interval> which) {
        return index -> index.interval().isPresent()
                ? OptionalDouble.of(which.applyAsDouble(index.interval().get()))
                : OptionalDouble.empty();
    }
}
