package runthrough.report.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import runthrough.chart.comparison.ComparisonCharts;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Kind;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Texts;
import runthrough.report.described.InputTables;
import runthrough.study.TargetStatus;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Difference.Significance;

/** What each alternative gives and gains, and which differences are statistically significant. */
public final class ComparisonAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT =
            new AnswerFormat("compare", 3, Subject.OF_LINES, () -> ComparisonDocument.SHAPE);

    private final Comparison comparison;
    private final SimulationRequest written;
    private final StudyWords words;
    private final ComparisonFigures all;
    private final ComparisonFigure output;
    private final ComparisonFigure lost;

    private ComparisonAnswer(Comparison comparison, SimulationRequest written) {
        this.comparison = comparison;
        this.written = written;
        this.words = StudyWords.of(written.resultsIn(), comparison.chance());
        this.all = ComparisonFigures.of(comparison, words.texts());
        this.output = all.yearly(ComparisonMeasure.OUTPUT_MASS);
        this.lost = all.yearly(ComparisonMeasure.LOST_TIME);
    }

    /**
     * The answer of {@code comparison}.
     *
     * @param written the scenario without any change
     */
    public static Answer of(
            Comparison comparison, SimulationRequest written, List<String> warnings, Provenance provenance) {
        return new ComparisonAnswer(comparison, written).answer(warnings, provenance);
    }

    private Answer answer(List<String> warnings, Provenance provenance) {
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(written, provenance),
                        "Which alternative is worth what?",
                        words.basis(written, comparison.replications(), "alternative"),
                        words.random()),
                mark(),
                advice(),
                figures(),
                new Answer.Body(
                        ComparisonCharts.of(comparison),
                        ComparisonTables.of(comparison, all, words.texts()),
                        account()),
                () -> ComparisonDocument.SHAPE.fields(comparison, words.random()),
                warnings,
                provenance);
    }

    private Headline mark() {
        Optional<Compared> best = best();
        String word = best.map(one -> "MOST OUTPUT: " + one.alternative().name().toUpperCase(Locale.ROOT))
                .orElse("NO GAIN SHOWN");
        String sentence = best.map(this::sentence)
                .orElse("With no alternative is it shown that more comes out than with " + quoted(comparison.today())
                        + ".");
        return new Headline(Tone.NEUTRAL, word, sentence);
    }

    /** The one that gains most, among those whose gain in output is significant. */
    private Optional<Compared> best() {
        return comparison.others().stream()
                .filter(one -> isSignificantGain(output.of(one).difference().orElseThrow()))
                .max(Comparator.comparingDouble(
                        one -> output.of(one).difference().orElseThrow().mean()));
    }

    private static boolean isSignificantGain(Difference difference) {
        return difference.significance() == Significance.SIGNIFICANT && difference.mean() > 0;
    }

    /** Such as: "second uncoiler" gives 312 t (305 to 319) a year more than "as written" (significant); 40 h less is lost ... */
    private String sentence(Compared one) {
        return quoted(one) + " " + outputWords(one) + "; " + lostWords(one) + ".";
    }

    private String outputWords(Compared one) {
        Difference difference = output.of(one).difference().orElseThrow();
        String today = quoted(comparison.today());
        return switch (difference.significance()) {
            case SIGNIFICANT ->
                "gives " + output.size(difference) + " a year "
                        + (difference.mean() > 0 ? "more" : "less") + " than " + today + " ("
                        + ComparisonFigure.word(difference) + ")";
            case NOT_SHOWN -> "is not shown to change the output" + among(output, difference, " a year");
            case NONE -> "changes nothing in the output";
        };
    }

    private String lostWords(Compared one) {
        Difference difference = lost.of(one).difference().orElseThrow();
        return switch (difference.significance()) {
            case SIGNIFICANT ->
                lost.size(difference) + (difference.mean() > 0 ? " more" : " less") + " is lost ("
                        + ComparisonFigure.word(difference) + ")";
            case NOT_SHOWN -> "no change in the time lost is shown" + among(lost, difference, "");
            case NONE -> "the time lost is the same";
        };
    }

    private static String among(ComparisonFigure figure, Difference difference, String per) {
        return figure.value(difference)
                .range()
                .map(ends -> " (" + ends + per + ")")
                .orElse("");
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        Optional<Compared> best = best();
        comparison.others().stream()
                .filter(one -> best.filter(one::equals).isEmpty())
                .forEach(one -> advice.add(sentence(one)));
        comparison
                .notRun()
                .forEach(one ->
                        advice.add("\"" + one.name() + "\" cannot be run, and is not compared: " + one.why() + "."));
        advice.add(targets());
        comparison.all().stream()
                .filter(one -> one.stripBreaks() > 0)
                .forEach(one -> advice.add("With " + quoted(one) + " the strip would have broken "
                        + Texts.count(one.stripBreaks()) + " times: its numbers are not physical."));
        return advice;
    }

    private String targets() {
        String target = "The target of " + Texts.target(comparison.target()) + " run through ";
        String meets = names(TargetStatus.MEETS);
        String open = names(TargetStatus.UNDECIDED);
        return target
                + (meets.isEmpty() ? "is met by none" : "is met by " + meets)
                + (open.isEmpty() ? "." : "; open is " + open + ".");
    }

    private String names(TargetStatus answer) {
        return comparison.all().stream()
                .filter(one -> one.answer() == answer)
                .map(ComparisonAnswer::quoted)
                .collect(Collectors.joining(", "));
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        ComparisonFigure yearly = output.aYear();
        figures.add(Figure.of("today", yearly.value(comparison.today()), quoted(comparison.today())));
        comparison.others().forEach(one -> {
            Difference difference = yearly.of(one).difference().orElseThrow();
            figures.add(
                    new Figure(one.alternative().name(), yearly.change(difference), ComparisonFigure.word(difference)));
        });
        figures.add(
                Figure.of("a year", words.texts().value(Kind.TIME, comparison.yearlyTime()), "scheduled running time"));
        return figures;
    }

    private List<String> account() {
        List<String> account = new ArrayList<>();
        account.add(
                "Every alternative was run under the same random numbers: the same coils, and for each work element of the"
                        + " same list and name the same random numbers at each coil change. Each replication of one was held"
                        + " against the same replication of " + quoted(comparison.today())
                        + ", so that random numbers common to both do not blur the difference. What is compared is per coil"
                        + " change or per time of its own replication, since a run of so many coil changes takes"
                        + " longer where each of them does.");
        if (comparison.chance()) {
            account.add("Intervals of differences are Student's t over the pairs. "
                    + (comparison.others().size() == 1
                            ? "They hold with 95 %"
                            : "Because " + comparison.others().size()
                                    + " alternatives are judged at once, each is made with "
                                    + words.texts().share(comparison.confidence())
                                    + ", so that those of one figure all hold together with 95 % (Bonferroni)")
                    + ". \"Significant\" means that the whole interval lies on one side of zero, \"not shown\" that"
                    + " it does not, \"none\" that every pair gave the same. Shares of which few coil changes"
                    + " differ have an interval by square and add from Wilson's. The alternatives are not"
                    + " judged against each other: name another one as today for that.");
        } else {
            account.add("Nothing is random in any of them: every difference is exact.");
        }
        account.add(
                "Time lost is that of starved stops and slowing, at the rated speed: where coil changes stop the line every time, as"
                        + " with rethreading, look at it rather than at the share run through. Paid hours are crew times time, whether they are at the"
                        + " joint or not: what labour costs goes by them. Crew time at the joint, beside them, is"
                        + " the time that tail and join work take, rethreading and joints made again included, times the"
                        + " crew of the shift in which the coil change begins, all of whom count as present; waiting for the next coil is not in it. A year is the"
                        + " running time that the scenario schedules (run.hours-per-year), 4000 h where it says nothing;"
                        + " what it comes to is in proportion.");
        return account;
    }

    private static String quoted(Compared one) {
        return "\"" + one.alternative().name() + "\"";
    }
}
