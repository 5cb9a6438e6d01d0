package runthrough.report.times;

import java.util.OptionalDouble;
import runthrough.report.JsonShape;
import runthrough.report.described.DistributionYaml;
import runthrough.study.fitting.Recommendation.Reason;
import runthrough.study.times.ElementTimes;
import runthrough.study.times.Outliers;
import runthrough.study.times.SampleSize;
import runthrough.study.times.Trend;

/** JSON of a element of a time-study sheet. */
final class ElementDocument {
    /** An element and all that is known of it. */
    record Element(TimesResult result, int i) {
        ElementTimes times() {
            return result.statistics().elements().get(i);
        }

        SampleSize size() {
            return result.sizes().get(i);
        }
    }

    private static final JsonShape<Outliers.Outlier> OUTLIER = JsonShape.<Outliers.Outlier>named("outlier")
            .count(
                    "row",
                    "Number of the row in the sheet, from 1.",
                    found -> found.row().number())
            .count("line", "Line of the file.", found -> found.row().line())
            .number("time_s", "The time.", Outliers.Outlier::time)
            .flag(
                    "far_out",
                    "Whether it lies more than 3 interquartile ranges beyond the quartiles.",
                    Outliers.Outlier::farOut);

    private static final JsonShape<Trend> TREND = JsonShape.<Trend>named("trend")
            .count("n", "Times compared.", Trend::n)
            .number("tau", "Kendall's tau.", Trend::tau)
            .number("p", "How likely so strong a trend is by chance.", Trend::p)
            .number(
                    "adjusted_p",
                    "The same by Bonferroni over the elements of the sheet: what decides whether it is shown.",
                    Trend::adjusted)
            .number("slope_s_per_change", "Sen's slope from one coil change to the next.", Trend::slope)
            .number("slope_low_s_per_change", "Lower end of its 95 % interval.", Trend::low)
            .number("slope_high_s_per_change", "Upper end.", Trend::high);

    static final JsonShape<Element> SHAPE = JsonShape.<Element>named("element")
            .text("name", "Its name.", element -> element.times().element().name())
            .text(
                    "part",
                    "prepare, tail or join.",
                    element -> element.times().element().partOrJoin().word())
            .flag(
                    "part_given",
                    "Whether the sheet says so; else it counts as join.",
                    element -> element.times().element().part().isPresent())
            .count("n", "Times there are.", element -> element.times().n())
            .count(
                    "gaps",
                    "Rows in which it was not timed.",
                    element -> element.times().gaps())
            .number("mean_s", "Mean.", element -> element.times().moments().mean())
            .optionalNumber(
                    "sd_s",
                    "Standard deviation, divisor n - 1; null for one time.",
                    element -> OptionalDouble.of(element.times().moments().sd()))
            .optionalNumber(
                    "cv",
                    "Standard deviation over mean.",
                    element -> OptionalDouble.of(element.times().cv()))
            .number(
                    "least_s",
                    "Least time.",
                    element -> element.times().sample().percentile(0))
            .number("median_s", "Median.", element -> element.times().sample().percentile(0.5))
            .number(
                    "p90_s",
                    "90th percentile.",
                    element -> element.times().sample().percentile(0.9))
            .number(
                    "greatest_s",
                    "Greatest time.",
                    element -> element.times().sample().percentile(1))
            .number(
                    "reading_step_s",
                    "To what the watch was read; 0 when that does not show.",
                    element -> element.times().step())
            .optionalNumber(
                    "fence_low_s",
                    "Lower fence; null with too few times.",
                    element -> OptionalDouble.of(element.times().outliers().low()))
            .optionalNumber(
                    "fence_high_s",
                    "Upper fence.",
                    element -> OptionalDouble.of(element.times().outliers().high()))
            .list(
                    "outliers",
                    "Times beyond the fences; all are counted.",
                    OUTLIER,
                    element -> element.times().outliers().found())
            .optional(
                    "trend",
                    "Trend over the sheet; null with too few times.",
                    TREND,
                    element -> element.times().trend())
            .number(
                    "observations_needed",
                    "By the ILO formula, not rounded.",
                    element -> element.size().needed())
            .count(
                    "observations_to_take",
                    "Still to take.",
                    element -> element.size().more())
            .word(
                    "choice",
                    "Why a distribution is recommended, or none.",
                    Reason.class,
                    element -> element.result()
                            .fits()
                            .get(element.i())
                            .recommendation()
                            .reason())
            .text(
                    "in_scenario",
                    "What to simulate with, as a scenario has it.",
                    element -> DistributionYaml.of(
                            element.result().fits().get(element.i()).distribution()))
            .list(
                    "fits",
                    "Distributions fitted, best AICc first.",
                    FitDocument.SHAPE,
                    element -> element.result().fits().get(element.i()).candidates());

    private ElementDocument() {}
}
