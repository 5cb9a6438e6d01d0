package runthrough.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.Known;
import runthrough.study.fitting.Recommendation.Reason;
import runthrough.study.times.Correlation;
import runthrough.study.times.ElementTimes;
import runthrough.study.times.JointTail;
import runthrough.study.times.Outliers;
import runthrough.study.times.SampleSize;
import runthrough.study.times.Trend;

/** What a time-study sheet tells, as JSON. */
final class TimesDocument {
    private static final JsonShape<Outliers.Outlier> OUTLIER = JsonShape.<Outliers.Outlier>named("outlier")
            .count(
                    "row",
                    "Number of the row in the sheet, from 1.",
                    found -> found.row().number())
            .count("line", "Line of the file.", found -> found.row().line())
            .number("time_s", "The time.", Outliers.Outlier::time)
            .flag("far_out", "Whether it lies more than 3 quartile distances out.", Outliers.Outlier::farOut);

    private static final JsonShape<Trend> TREND = JsonShape.<Trend>named("trend")
            .count("n", "Times compared.", Trend::n)
            .number("tau", "Kendall's tau.", Trend::tau)
            .number("p", "How likely so strong a trend is by luck.", Trend::p)
            .number("slope_s_per_change", "Sen's slope from one coil change to the next.", Trend::slope)
            .number("slope_low_s_per_change", "Lower end of its 95 % interval.", Trend::low)
            .number("slope_high_s_per_change", "Upper end.", Trend::high);

    private static final JsonShape<Known> PARAMETER = JsonShape.<Known>named("parameter")
            .text("name", "What it is.", Known::name)
            .flag("time", "Whether it is a time in seconds, not a plain number.", Known::isTime)
            .number("value", "As fitted.", Known::value)
            .optionalNumber("low", "Lower end of its 95 % interval.", known -> OptionalDouble.of(known.low()))
            .optionalNumber("high", "Upper end.", known -> OptionalDouble.of(known.high()));

    private static final JsonShape<Candidate> FIT = JsonShape.<Candidate>named("fit")
            .text("law", "Name of the law.", fit -> fit.law().label())
            .text(
                    "in_scenario",
                    "The law as a scenario has it.",
                    fit -> LawYaml.of(fit.law().law()))
            .number(
                    "log_likelihood",
                    "Logarithm of the likelihood.",
                    fit -> fit.law().logLikelihood())
            .number("aic", "Akaike's criterion.", fit -> fit.law().aic())
            .optionalNumber("aicc", "The same, corrected for few times.", fit -> OptionalDouble.of(fit.aicc()))
            .number(
                    "anderson_darling",
                    "Distance A squared.",
                    fit -> fit.distance().andersonDarling())
            .number(
                    "anderson_darling_limit",
                    "What 5 % of samples exceed.",
                    fit -> fit.limits().andersonDarling())
            .number("anderson_darling_p", "Share of samples as far.", Candidate::p1)
            .number("kolmogorov_smirnov", "Distance D.", fit -> fit.distance().kolmogorovSmirnov())
            .number(
                    "kolmogorov_smirnov_limit",
                    "What 5 % of samples exceed.",
                    fit -> fit.limits().kolmogorovSmirnov())
            .number("kolmogorov_smirnov_p", "Share of samples as far.", Candidate::p2)
            .list("parameters", "What describes it, with intervals.", PARAMETER, Candidate::parameters);

    /** An element and all that is known of it. */
    private record Element(TimesResult result, int i) {
        ElementTimes times() {
            return result.statistics().elements().get(i);
        }

        SampleSize size() {
            return result.sizes().get(i);
        }
    }

    private static final JsonShape<Element> ELEMENT = JsonShape.<Element>named("element")
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
                    "Why a law is recommended, or none.",
                    Reason.class,
                    element -> element.result()
                            .fits()
                            .get(element.i())
                            .recommendation()
                            .reason())
            .text(
                    "in_scenario",
                    "What to simulate with, as a scenario has it.",
                    element ->
                            LawYaml.of(element.result().fits().get(element.i()).law()))
            .list(
                    "fits",
                    "Laws fitted, best AICc first.",
                    FIT,
                    element -> element.result().fits().get(element.i()).candidates());

    /** A pair of elements. */
    private record Pair(TimesResult result, Correlation correlation) {}

    private static final JsonShape<Pair> PAIR = JsonShape.<Pair>named("pair")
            .text(
                    "element",
                    "The one element.",
                    pair -> pair.result().label(pair.correlation().first()))
            .text(
                    "with",
                    "The other.",
                    pair -> pair.result().label(pair.correlation().second()))
            .count(
                    "n",
                    "Rows in which both were timed.",
                    pair -> pair.correlation().n())
            .number(
                    "spearman",
                    "Correlation of ranks.",
                    pair -> pair.correlation().spearman())
            .number(
                    "pearson",
                    "Correlation of times.",
                    pair -> pair.correlation().pearson())
            .number(
                    "p",
                    "How likely so strong a correlation of ranks is by luck.",
                    pair -> pair.correlation().p())
            .number(
                    "p_holm",
                    "The same, allowing for all pairs.",
                    pair -> pair.correlation().adjusted());

    private static final JsonShape<JointTail.Percentile> PERCENTILE = JsonShape.<JointTail.Percentile>named(
                    "percentile")
            .number("share", "Share of joints below.", JointTail.Percentile::p)
            .number("observed_s", "Of the rows as observed.", JointTail.Percentile::together)
            .number("apart_s", "Of elements drawn each on its own.", JointTail.Percentile::apart)
            .number("difference_low_s", "Lower end of the 95 % interval of the difference.", JointTail.Percentile::low)
            .number("difference_high_s", "Upper end.", JointTail.Percentile::high);

    private static final JsonShape<JointTail> JOINT = JsonShape.<JointTail>named("joint")
            .count("rows", "Rows in which all standing work was timed.", JointTail::rows)
            .number(
                    "mean_s",
                    "Mean of all standing work.",
                    joint -> joint.together().mean())
            .number("sd_s", "Its standard deviation.", joint -> joint.together().sd())
            .number("sd_apart_s", "That of elements drawn each on its own.", JointTail::apartSd)
            .list("percentiles", "Long joints.", PERCENTILE, JointTail::percentiles);

    private static final JsonShape<TimesAnswer> DOCUMENT = JsonShape.<TimesAnswer>named("times")
            .text("format", "Name and version of this shape.", answer -> StudyJson.format(TimesAnswer.NAME))
            .text(
                    "program",
                    "Name and version of the program.",
                    answer -> answer.provenance().program())
            .text("sheet", "File of the sheet, as it was named.", TimesAnswer::title)
            .optionalText(
                    "sha256",
                    "SHA-256 of its bytes in hexadecimal.",
                    answer -> answer.provenance().fingerprint())
            .count(
                    "seed",
                    "Seed of the random numbers.",
                    answer -> answer.result().seed())
            .optionalText(
                    "timed",
                    "When, as the user said.",
                    answer -> answer.result().timed())
            .text(
                    "verdict",
                    "The answer in a word or two.",
                    answer -> answer.mark().word())
            .text(
                    "headline",
                    "The answer as a sentence.",
                    answer -> answer.mark().sentence())
            .texts("advice", "What else must be known, a paragraph each.", TimesAnswer::advice)
            .count(
                    "rows",
                    "Coil changes observed, without those left out.",
                    answer -> answer.result().rows())
            .texts(
                    "left_out",
                    "Numbers of the rows that the user left out.",
                    answer -> answer.result().leftOut().stream()
                            .map(String::valueOf)
                            .toList())
            .flag(
                    "rated",
                    "Whether the sheet has ratings.",
                    answer -> answer.result().statistics().sheet().isRated())
            .flag(
                    "basic_times",
                    "Whether they were applied.",
                    answer -> answer.result().basic())
            .number(
                    "confidence",
                    "Of the sample sizes.",
                    answer -> answer.result().sizes().get(0).confidence())
            .number(
                    "precision",
                    "Of the sample sizes, as a share of the mean.",
                    answer -> answer.result().sizes().get(0).precision())
            .list("elements", "One for each element, in the order of the sheet.", ELEMENT, TimesDocument::elements)
            .list("correlations", "Pairs of elements.", PAIR, TimesDocument::pairs)
            .optional("joint", "Standing work together; null with too few whole rows.", JOINT, TimesDocument::joint)
            .text("fragment", "The work of a coil change as a scenario has it, in YAML.", TimesAnswer::fragment)
            .texts("warnings", "What was warned of, in words.", TimesAnswer::warnings);

    private TimesDocument() {}

    private static List<Element> elements(TimesAnswer answer) {
        return IntStream.range(0, answer.result().fits().size())
                .mapToObj(i -> new Element(answer.result(), i))
                .toList();
    }

    private static List<Pair> pairs(TimesAnswer answer) {
        return answer.result().statistics().correlations().stream()
                .map(correlation -> new Pair(answer.result(), correlation))
                .toList();
    }

    private static Optional<JointTail> joint(TimesAnswer answer) {
        return answer.result().statistics().tail();
    }

    static String render(TimesAnswer answer) {
        return StudyJson.text(DOCUMENT.fields(answer, true).map());
    }

    /** The JSON Schema of the document. */
    static String schema() {
        return StudyJson.schema(TimesAnswer.NAME, List.of(DOCUMENT));
    }
}
