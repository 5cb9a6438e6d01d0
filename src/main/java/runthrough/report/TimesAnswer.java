package runthrough.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.chart.Chart;
import runthrough.chart.TimesCharts;
import runthrough.report.ReportPage.KeyFigure;
import runthrough.study.fitting.Recommendation.Reason;
import runthrough.study.times.JointTail;
import runthrough.study.times.Outliers;
import runthrough.study.times.SampleSize;

/**
 * What a time-study sheet tells, ready to be told: terminal, page, JSON and CSV files are all made from this.
 *
 * @param result what was found out
 * @param title of the page
 * @param mark the answer in a word and a sentence
 * @param advice what else must be known, a paragraph each
 * @param figures the numbers that matter most
 * @param charts in order
 * @param fragment of a scenario, as YAML
 * @param warnings in words, in order
 * @param provenance what to state so that the result can be made again
 */
public record TimesAnswer(
        TimesResult result,
        String title,
        ReportPage.Mark mark,
        List<String> advice,
        List<KeyFigure> figures,
        List<Chart> charts,
        String fragment,
        List<String> warnings,
        Provenance provenance) {

    /** The name of the command and of its JSON format. */
    static final String NAME = "times";

    /** The name of the fragment's file in a report's folder. */
    static final String FRAGMENT = "work-times.yaml";

    public TimesAnswer {
        advice = List.copyOf(advice);
        figures = List.copyOf(figures);
        charts = List.copyOf(charts);
        warnings = List.copyOf(warnings);
    }

    /** The answer that {@code result} gives. */
    public static TimesAnswer of(TimesResult result, List<String> warnings, Provenance provenance) {
        List<String> cautions = TimesAdvice.cautions(result);
        return new TimesAnswer(
                result,
                result.statistics().sheet().file(),
                mark(result, cautions),
                Stream.concat(cautions.stream(), TimesAdvice.readings(result).stream())
                        .toList(),
                figures(result),
                TimesCharts.of(result.fits()),
                TimesFragment.of(result, provenance),
                warnings,
                provenance);
    }

    private static ReportPage.Mark mark(TimesResult result, List<String> cautions) {
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
                ? new ReportPage.Mark("✓", "READY TO USE", "runs-through", sentence, "")
                : new ReportPage.Mark("◆", "USE WITH CARE", "marginal", sentence, "");
    }

    private static List<KeyFigure> figures(TimesResult result) {
        List<KeyFigure> figures = new ArrayList<>();
        result.statistics().tail().ifPresent(tail -> figures.addAll(joint(tail)));
        long outliers = result.statistics().elements().stream()
                .mapToLong(element -> element.outliers().found().size())
                .sum();
        double expected = Outliers.BY_LUCK
                * result.statistics().elements().stream()
                        .mapToLong(element -> element.n())
                        .sum();
        figures.add(new KeyFigure(
                "outliers", Long.toString(outliers), "about " + Texts.number(expected) + " by chance alone; kept"));
        SampleSize most = result.sizes().stream()
                .max(Comparator.comparingLong(SampleSize::more))
                .orElseThrow();
        figures.add(new KeyFigure(
                "still to time",
                Long.toString(most.more()),
                "for every mean within " + TimesWords.percent(most.precision())));
        return figures;
    }

    private static List<KeyFigure> joint(JointTail tail) {
        JointTail.Percentile far = tail.percentiles().stream()
                .filter(at -> at.p() == 0.95)
                .findFirst()
                .orElseThrow();
        return List.of(
                new KeyFigure(
                        "joint time",
                        "mean " + TimesWords.seconds(tail.together().mean()),
                        "all standing work"),
                new KeyFigure(
                        "95 % of joints",
                        "at most " + TimesWords.seconds(far.together()),
                        TimesWords.seconds(far.apart()) + " with elements drawn on their own"));
    }

    /** What it was computed from. */
    public String basis() {
        return title + ", " + Texts.count(result.rows()) + " rows, seed " + result.seed()
                + result.timed().map(when -> ", timed " + when).orElse("");
    }

    /** Tables of the page. */
    public List<Table> tables() {
        return TimesTables.ofPage(result);
    }

    /** How it was computed, a paragraph each. */
    public List<String> account() {
        return TimesAccount.paragraphs();
    }

    /** Where it comes from. */
    public List<KeyFigure> origins() {
        List<KeyFigure> rows = new ArrayList<>();
        provenance.date().ifPresent(date -> rows.add(new KeyFigure("Date", date, "")));
        rows.add(new KeyFigure("Program", provenance.program(), ""));
        provenance.fingerprint().ifPresent(digits -> rows.add(new KeyFigure("SHA-256 of the sheet", digits, "")));
        rows.add(new KeyFigure("Seed", Long.toString(result.seed()), ""));
        return rows;
    }

    /** The whole answer as text for a terminal; see {@link StudyText}. */
    public String text(boolean colour) {
        return StudyText.render(
                new StudyText.Told(
                        title,
                        Optional.empty(),
                        mark,
                        advice,
                        figures,
                        basis(),
                        TimesTables.ofTerminal(result),
                        TextLines.WIDTH),
                colour);
    }

    /** The whole answer as JSON. */
    public String json() {
        return TimesDocument.render(this);
    }

    /** The JSON Schema of that. */
    public static String schema() {
        return TimesDocument.schema();
    }

    /** All files of a report's folder by name. */
    Map<String, String> files() {
        Map<String, String> files = TimesCsv.of(result);
        files.put(ReportFolder.HTML, TimesPage.render(this));
        files.put(NAME + ".json", json());
        files.put(FRAGMENT, fragment);
        return files;
    }
}
