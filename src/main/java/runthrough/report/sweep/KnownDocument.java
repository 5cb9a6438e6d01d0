package runthrough.report.sweep;

import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import runthrough.report.JsonShape;
import runthrough.study.TargetStatus;
import runthrough.study.sweep.CaseResult;
import runthrough.study.uncertainty.UncertainFigure;
import runthrough.study.uncertainty.Uncertainty;

/** What a line of a sweep gives besides of how well its answer is known: the numbers of {@code uncertainty} for that case. */
final class KnownDocument {
    static final JsonShape<CaseResult> MEMBERS = capacity(share(JsonShape.<CaseResult>named("known")
                    .optionalWord(
                            "answer_with_times",
                            "Whether the target is met, as far as the times are known.",
                            TargetStatus.class,
                            result -> result.known().map(Uncertainty::answer))
                    .optionalNumber(
                            "chance_target_met",
                            "Chance that the target is met, as far as the times are known.",
                            number(Uncertainty::chanceOfTarget))))
            .optionalCount(
                    "resamples",
                    "How often the observations were resampled.",
                    result -> result.known().map(known -> (long) known.resamples()));

    private KnownDocument() {}

    private static JsonShape<CaseResult> share(JsonShape<CaseResult> shape) {
        return shape.optionalNumber(
                        "share_as_observed",
                        "Share of coil changes run through with the times as observed, by the replications of the study.",
                        share(UncertainFigure::value))
                .optionalNumber(
                        "share_with_times_low",
                        "Lower end of its 95 % interval with what is not known of the times included.",
                        share(figure -> figure.all().low()))
                .optionalNumber(
                        "share_with_times_high",
                        "Upper end.",
                        share(figure -> figure.all().high()))
                .optionalNumber(
                        "share_simulation_alone_low",
                        "Lower end from simulation noise alone, as if the times were known exactly.",
                        share(figure -> figure.simulation().low()))
                .optionalNumber(
                        "share_simulation_alone_high",
                        "Upper end.",
                        share(figure -> figure.simulation().high()))
                .optionalNumber(
                        "share_half_width_of_times",
                        "Half the width of an interval from what is not known of the times alone.",
                        share(UncertainFigure::times));
    }

    private static JsonShape<CaseResult> capacity(JsonShape<CaseResult> shape) {
        return shape.optionalNumber(
                        "capacity_for_target_m",
                        "Capacity that meets the target; null where there is no accumulator, like what follows of it.",
                        capacity(UncertainFigure::value))
                .optionalNumber(
                        "capacity_with_times_low_m",
                        "Lower end of its 95 % interval with what is not known of the times included.",
                        capacity(figure -> figure.all().low()))
                .optionalNumber(
                        "capacity_with_times_high_m",
                        "Upper end.",
                        capacity(figure -> figure.all().high()))
                .optionalNumber(
                        "capacity_half_width_of_times_m",
                        "Half the width of an interval from what is not known of the times alone.",
                        capacity(UncertainFigure::times));
    }

    private static Function<CaseResult, OptionalDouble> number(ToDoubleFunction<Uncertainty> value) {
        return result -> CaseDocument.optional(result.known().map(value::applyAsDouble));
    }

    private static Function<CaseResult, OptionalDouble> share(ToDoubleFunction<UncertainFigure> value) {
        return number(known -> value.applyAsDouble(known.share()));
    }

    private static Function<CaseResult, OptionalDouble> capacity(ToDoubleFunction<UncertainFigure> value) {
        return result -> CaseDocument.optional(
                result.known().flatMap(Uncertainty::capacity).map(value::applyAsDouble));
    }
}
