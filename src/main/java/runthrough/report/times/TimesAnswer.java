package runthrough.report.times;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import runthrough.chart.times.TimesCharts;
import runthrough.quantity.Notation;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Cell;
import runthrough.report.Chapter;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Provenance;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.fitting.Recommendation.Reason;
import runthrough.study.times.JointTail;
import runthrough.study.times.Outliers;
import runthrough.study.times.SampleSize;

/** What a time-study sheet shows. */
public final class TimesAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT =
            new AnswerFormat("times", 2, TimesDocument.SUBJECT, () -> TimesDocument.SHAPE);

    /** The name of the file with the work of a coil change as a scenario has it. */
    public static final String FRAGMENT = "work-times.yaml";

    private TimesAnswer() {}

    /** The answer that {@code result} gives. */
    public static Answer of(TimesResult result, List<String> warnings, Provenance provenance) {
        List<String> cautions = TimesAdvice.cautions(result);
        String fragment = TimesFragment.of(result, provenance);
        List<Table> tables = new ArrayList<>(TimesTables.of(result));
        tables.add(FitTables.parameters(result));
        return new Answer(
                new Answer.Question(
                        FORMAT, subject(result, provenance), "What the time-study sheet shows", basis(result), true),
                mark(result, cautions),
                Stream.concat(cautions.stream(), TimesAdvice.readings(result).stream())
                        .toList(),
                figures(result),
                new Answer.Body(
                        TimesCharts.of(result.fits()),
                        tables,
                        List.of(
                                Chapter.ofTables("fits", "Distributions fitted", List.of(FitTables.fits(result))),
                                Chapter.of("account", "How it was computed", TimesAccount.paragraphs()),
                                Chapter.of(
                                                "fragment",
                                                "For a scenario",
                                                List.of(
                                                        "The work of a coil change with the distributions recommended, to paste into a"
                                                                + " scenario; the same is in the file " + FRAGMENT
                                                                + "."))
                                        .and(Stream.of(new Chapter.Kept(fragment)))),
                        Map.of(FRAGMENT, fragment)),
                () -> TimesDocument.SHAPE.fields(new TimesDocument.Shown(result, fragment), true),
                warnings,
                provenance);
    }

    private static Subject subject(TimesResult result, Provenance provenance) {
        return new Subject(
                result.statistics().sheet().file(),
                List.of(),
                "sheet",
                List.of(),
                TimesDocument.SUBJECT.fields(new TimesDocument.Sheet(result, provenance), true),
                result.seed());
    }

    private static Headline mark(TimesResult result, List<String> cautions) {
        long distributions = result.fits().stream()
                .filter(fits -> fits.recommendation().reason() == Reason.FITS)
                .count();
        int all = result.fits().size();
        String sentence = Texts.count(result.rows()) + (result.rows() == 1 ? " coil change was" : " coil changes were")
                + " timed, " + all + (all == 1 ? " element" : " elements") + ". "
                + (distributions == all
                        ? "Each is well described by a distribution."
                        : distributions == 0
                                ? "No element is described by a distribution; take the observations as they are."
                                : distributions + (distributions == 1 ? " is" : " are")
                                        + " well described by a distribution, for the others take the observations as they are.");
        return cautions.isEmpty()
                ? new Headline(Tone.RUNS_THROUGH, "READY TO USE", sentence)
                : new Headline(Tone.MARGINAL, "USE WITH CARE", sentence);
    }

    private static List<Figure> figures(TimesResult result) {
        List<Figure> figures = new ArrayList<>();
        result.statistics().tail().ifPresent(tail -> figures.addAll(joint(tail)));
        long outliers = result.statistics().elements().stream()
                .mapToLong(element -> element.outliers().found().size())
                .sum();
        double expected = Outliers.BY_CHANCE
                * result.statistics().elements().stream()
                        .mapToLong(element -> element.n())
                        .sum();
        figures.add(new Figure(
                "outliers", Cell.of(outliers), "about " + Texts.number(expected) + " by chance alone; kept"));
        SampleSize most = result.sizes().stream()
                .max(Comparator.comparingLong(SampleSize::more))
                .orElseThrow();
        figures.add(new Figure(
                "still to time",
                Cell.of(most.more()),
                "for every mean within " + Notation.SHARE.text(most.precision())));
        return figures;
    }

    private static List<Figure> joint(JointTail tail) {
        JointTail.Percentile far = tail.percentiles().stream()
                .filter(at -> at.p() == 0.95)
                .findFirst()
                .orElseThrow();
        Notation notation = Notation.time(Math.max(far.together(), far.apart()));
        double mean = tail.together().mean();
        return List.of(
                Figure.of("joint cycle time", Value.of(mean, Notation.time(mean)), "mean of all standing work"),
                new Figure(
                        "95 % of joints",
                        new Cell.Bound("at most", Value.of(far.together(), notation)),
                        notation.text(far.apart()) + " with elements drawn on their own"));
    }

    private static String basis(TimesResult result) {
        return result.statistics().sheet().file() + ", " + Texts.count(result.rows()) + " rows, seed " + result.seed()
                + result.timed().map(when -> ", timed " + when).orElse("");
    }
}
