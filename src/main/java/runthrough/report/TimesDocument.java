package runthrough.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.study.times.Correlation;
import runthrough.study.times.JointTail;

/** What a time-study sheet tells, as JSON. */
final class TimesDocument {
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
                    "How likely so strong a correlation of ranks is by chance.",
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
            .list(
                    "elements",
                    "One for each element, in the order of the sheet.",
                    ElementDocument.SHAPE,
                    TimesDocument::elements)
            .list("correlations", "Pairs of elements.", PAIR, TimesDocument::pairs)
            .optional("joint", "Standing work together; null with too few whole rows.", JOINT, TimesDocument::joint)
            .text("fragment", "The work of a coil change as a scenario has it, in YAML.", TimesAnswer::fragment)
            .texts("warnings", "What was warned of, in words.", TimesAnswer::warnings);

    private TimesDocument() {}

    private static List<ElementDocument.Element> elements(TimesAnswer answer) {
        return IntStream.range(0, answer.result().fits().size())
                .mapToObj(i -> new ElementDocument.Element(answer.result(), i))
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
