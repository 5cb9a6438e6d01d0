package runthrough.report.uncertainty;

import java.util.Optional;
import runthrough.report.JsonShape;
import runthrough.study.TargetStatus;
import runthrough.study.uncertainty.MeasuredInputs.Input;
import runthrough.study.uncertainty.UncertainFigure;
import runthrough.study.uncertainty.Uncertainty;

/** JSON of how well the answer is known. */
final class UncertaintyDocument {
    /** What was found, and how well it was to be known. */
    record Asked(Uncertainty known, UncertaintyPrecision precision) {
        private Needed needed(Input input) {
            return new Needed(
                    input,
                    UncertaintyAnswer.further(input, known.share().observationsFactor(precision.share())),
                    known.capacity()
                            .map(one -> UncertaintyAnswer.further(
                                    input, one.observationsFactor(precision.capacity() * one.value()))));
        }
    }

    private record Needed(Input input, long forShare, Optional<Long> forCapacity) {}

    private static final JsonShape<UncertainFigure.Band> BAND = JsonShape.<UncertainFigure.Band>named("band")
            .number("low", "Lower end of the 95 % interval.", UncertainFigure.Band::low)
            .number("high", "Upper end.", UncertainFigure.Band::high);

    private static final JsonShape<UncertainFigure> KNOWN = JsonShape.<UncertainFigure>named("known")
            .number("value", "With the times as observed.", UncertainFigure::value)
            .in(
                    "simulation_alone",
                    "From simulation noise, as if the times were known exactly.",
                    BAND,
                    UncertainFigure::simulation)
            .in("with_times", "With what is not known of the times included.", BAND, UncertainFigure::all)
            .number(
                    "half_width_of_times",
                    "Half the width of an interval from what is not known of the times alone.",
                    UncertainFigure::times);

    private static final JsonShape<Needed> INPUT = JsonShape.<Needed>named("input")
            .text(
                    "name",
                    "The sheet or the work element.",
                    needed -> needed.input().name())
            .count("observations", "Rows or values.", needed -> needed.input().observations())
            .count("more_for_share", "How many more for the share to be known as well as asked for.", Needed::forShare)
            .optionalCount(
                    "more_for_capacity",
                    "How many more for the capacity; null where there is no accumulator.",
                    Needed::forCapacity);

    private static final JsonShape<Uncertainty.Point> POINT = JsonShape.<Uncertainty.Point>named("point")
            .number("capacity_m", "Capacity.", Uncertainty.Point::capacity)
            .in("share_run_through", "The share with it.", KNOWN, Uncertainty.Point::share);

    static final JsonShape<Asked> SHAPE = JsonShape.<Asked>named("uncertainty")
            .number(
                    "target",
                    "Share of coil changes that should run through.",
                    asked -> asked.known().target())
            .word(
                    "answer",
                    "Whether the target is met, as far as the times are known.",
                    TargetStatus.class,
                    asked -> asked.known().answer())
            .word(
                    "answer_if_times_were_known",
                    "The same from simulation noise alone.",
                    TargetStatus.class,
                    asked -> asked.known().answerIfTimesWereKnown())
            .number(
                    "chance_target_met",
                    "Chance that the target is met, as far as the times are known: the part of the resamples in which it is, their"
                            + " spread scaled and placed as for the interval.",
                    asked -> asked.known().chanceOfTarget())
            .in(
                    "share_run_through",
                    "Share of coil changes run through.",
                    KNOWN,
                    asked -> asked.known().share())
            .optional(
                    "capacity_m",
                    "Capacity that meets the target; null where there is no accumulator.",
                    KNOWN,
                    asked -> asked.known().capacity())
            .count(
                    "resamples",
                    "How often the observations were resampled.",
                    asked -> asked.known().resamples())
            .number(
                    "precision_share",
                    "Half-width asked for the share.",
                    asked -> asked.precision().share())
            .number(
                    "precision_capacity",
                    "Half-width asked for the capacity, as a part of it.",
                    asked -> asked.precision().capacity())
            .list(
                    "inputs",
                    "What is known from observations.",
                    INPUT,
                    asked -> asked.known().inputs().stream().map(asked::needed).toList())
            .list(
                    "curve",
                    "Share against capacity.",
                    POINT,
                    asked -> asked.known().curve());

    private UncertaintyDocument() {}
}
