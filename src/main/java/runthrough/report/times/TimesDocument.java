package runthrough.report.times;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.report.JsonShape;
import runthrough.report.Provenance;
import runthrough.study.times.Correlation;
import runthrough.study.times.JointTail;

/** What  shows, as JSON. */
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

    /** A sheet and where it comes from. */
    record Sheet(TimesResult result, Provenance provenance) {}

    /** What was found out, and the fragment made of it. */
    record Shown(TimesResult result, String fragment) {}

    static final JsonShape<Sheet> SUBJECT = JsonShape.<Sheet>named("subject")
            .text(
                    "sheet",
                    "File of the sheet, as it was named.",
                    sheet -> sheet.result().statistics().sheet().file())
            .optionalText(
                    "sha256",
                    "SHA-256 of its bytes in hexadecimal.",
                    sheet -> sheet.provenance().fingerprint())
            .count(
                    "seed",
                    "Seed of the random numbers.",
                    sheet -> sheet.result().seed())
            .optionalText(
                    "timed", "When, as the user said.", sheet -> sheet.result().timed());

    static final JsonShape<Shown> SHAPE = JsonShape.<Shown>named("times")
            .count(
                    "rows",
                    "Coil changes observed, without those left out.",
                    shown -> shown.result().rows())
            .texts(
                    "left_out",
                    "Numbers of the rows that the user left out.",
                    shown -> shown.result().leftOut().stream()
                            .map(String::valueOf)
                            .toList())
            .flag(
                    "rated",
                    "Whether the sheet has ratings.",
                    shown -> shown.result().statistics().sheet().isRated())
            .flag(
                    "basic_times",
                    "Whether they were applied.",
                    shown -> shown.result().basic())
            .number(
                    "confidence",
                    "Of the sample sizes.",
                    shown -> shown.result().sizes().get(0).confidence())
            .number(
                    "precision",
                    "Of the sample sizes, as a share of the mean.",
                    shown -> shown.result().sizes().get(0).precision())
            .list(
                    "elements",
                    "One for each element, in the order of the sheet.",
                    ElementDocument.SHAPE,
                    TimesDocument::elements)
            .list("correlations", "Pairs of elements.", PAIR, TimesDocument::pairs)
            .optional("joint", "Standing work together; null with too few whole rows.", JOINT, TimesDocument::joint)
            .text("fragment", "The work of a coil change as a scenario has it, in YAML.", Shown::fragment);

    private TimesDocument() {}

    private static List<ElementDocument.Element> elements(Shown shown) {
        return IntStream.range(0, shown.result().fits().size())
                .mapToObj(i -> new ElementDocument.Element(shown.result(), i))
                .toList();
    }

    private static List<Pair> pairs(Shown shown) {
        return shown.result().statistics().correlations().stream()
                .map(correlation -> new Pair(shown.result(), correlation))
                .toList();
    }

    private static Optional<JointTail> joint(Shown shown) {
        return shown.result().statistics().tail();
    }
}
