package runthrough.report.log;

import java.util.ArrayList;
import java.util.List;
import runthrough.chart.log.LogCharts;
import runthrough.linelog.LineLog;
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
import runthrough.study.logged.FigureComparison;
import runthrough.study.logged.LogComparison;
import runthrough.study.logged.LogComparison.Fit;
import runthrough.study.logged.LogFigure;

/** Shows whether the model fits the line, as its log shows it. */
public final class LogAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT = new AnswerFormat("log", 2, Subject.OF_LINES, () -> LogDocument.SHAPE);

    private final LogComparison comparison;
    private final StudyWords words;
    private final LogValues values;

    private LogAnswer(LogComparison comparison) {
        this.comparison = comparison;
        this.words = StudyWords.of(comparison.request().resultsIn(), true);
        this.values = new LogValues(comparison, words.texts());
    }

    /** The answer of {@code comparison}. */
    public static Answer of(LogComparison comparison, List<String> warnings, Provenance provenance) {
        return new LogAnswer(comparison).answer(warnings, provenance);
    }

    private Answer answer(List<String> warnings, Provenance provenance) {
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(comparison.request(), provenance),
                        "Does the model fit the line?",
                        basis(),
                        comparison.simulatedLogs() > 1),
                mark(),
                advice(),
                figures(),
                new Answer.Body(
                        LogCharts.of(comparison),
                        List.of(LogTables.figures(values), LogTables.changes(comparison.log())),
                        account()),
                () -> LogDocument.SHAPE.fields(comparison, true),
                warnings,
                provenance);
    }

    private Headline mark() {
        return switch (comparison.fit()) {
            case FITS -> new Headline(Tone.RUNS_THROUGH, "THE MODEL FITS YOUR LINE", sentence());
            case LINE_STOPS_MORE -> new Headline(Tone.STOPS, "THE LINE STOPS MORE OFTEN", sentence());
            case LINE_STOPS_LESS -> new Headline(Tone.MARGINAL, "THE LINE STOPS LESS OFTEN", sentence());
        };
    }

    private String sentence() {
        FigureComparison share = share();
        String seen = "Of " + Texts.count(changes()) + " coil changes in the log "
                + words.texts().share(share.logged()) + " ran through without a stop; ";
        if (comparison.simulatedLogs() == 1) {
            return seen + "in the model " + words.texts().share(share.mean()) + " do, and nothing is random.";
        }
        String expected = "in a log of this length the model gives " + shares(share.low(), share.high());
        return switch (comparison.fit()) {
            case FITS -> seen + expected + " in 95 % of cases.";
            case LINE_STOPS_MORE -> seen + expected + ", and so few in " + chance(share.atMost()) + ".";
            case LINE_STOPS_LESS -> seen + expected + ", and so many in " + chance(share.atLeast()) + ".";
        };
    }

    private String chance(double share) {
        long cases = Math.round(share * comparison.simulatedLogs());
        return (cases == 0 ? "none" : Long.toString(cases)) + " of " + comparison.simulatedLogs() + " such logs";
    }

    private String shares(double low, double high) {
        return words.texts().range(Kind.SHARE, low, high);
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        boolean differs = comparison.fit() != Fit.FITS;
        List<FigureComparison> further = comparison.differing();
        if (differs) {
            advice.add(lookAt(further));
        } else if (comparison.simulatedLogs() > 1) {
            double half = (share().high() - share().low()) / 2;
            advice.add("A log of this length shows a difference of some "
                    + words.texts().share(half)
                    + " of coil changes; a smaller one stays hidden. A log four times as long would show half of it.");
        }
        further.forEach(figure -> advice.add(difference(figure)));
        if (comparison.loggedJointCycleTimes()) {
            advice.add(
                    "The model was given the joint cycle times of the log, waits included, so this tests the entry, the"
                            + " accumulator and the process alone.");
        }
        return advice;
    }

    private String lookAt(List<FigureComparison> further) {
        boolean more = comparison.fit() == Fit.LINE_STOPS_MORE;
        if (differs(further, LogFigure.JOINT_CYCLE_TIME) || differs(further, LogFigure.LONG_JOINT_CYCLE_TIME)) {
            return "Look at the joint cycle times first: they differ, as shown below. With --logged-joint-cycle-times the model takes them"
                    + " from the log, and shows whether the rest fits.";
        }
        if (differs(further, LogFigure.CYCLE)) {
            return "The joint cycle times agree, but coils last longer or shorter than in the model, as shown below: look at coil"
                    + " length and process speed.";
        }
        return more
                ? "Joint cycle times and the time from coil to coil show no difference: look at how much of the accumulator is really used, how fast it"
                        + " fills, whether the process runs faster than described, and whether the log holds stops that are not"
                        + " as starved (give it a column reason)."
                : "Joint cycle times and the time from coil to coil show no difference: look at whether people slow the process down before it runs"
                        + " out of strip, whether the reserve is used, and whether the process runs slower than described.";
    }

    private static boolean differs(List<FigureComparison> further, LogFigure figure) {
        return further.stream().anyMatch(one -> one.figure() == figure);
    }

    private String difference(FigureComparison figure) {
        return "Different: " + values.name(figure.figure()) + ", "
                + values.logged(figure).text() + " in the log, "
                + values.model(figure).text() + " in the model.";
    }

    private List<Figure> figures() {
        FigureComparison joint = comparison.of(LogFigure.JOINT_CYCLE_TIME);
        FigureComparison stop = comparison.of(LogFigure.STOP_TIME);
        String spread = comparison.simulatedLogs() == 1 ? "" : "95 % of simulated logs";
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.of("ran through, logged", values.loggedShare()));
        figures.add(Figure.of("ran through, model", values.model(share()), spread));
        figures.add(Figure.of("joint cycle time, logged", values.logged(joint), "mean"));
        figures.add(Figure.of("joint cycle time, model", values.model(joint), spread));
        if (stop.isKnown()) {
            figures.add(Figure.of("a stop lasts, logged", values.logged(stop), "mean"));
            figures.add(Figure.of("a stop lasts, model", values.model(stop), spread));
        }
        return figures;
    }

    private String basis() {
        LineLog log = comparison.log();
        return Texts.count(changes()) + " whole coil changes and "
                + Texts.count(log.joints().size()) + " joints of "
                + log.name() + ", and " + comparison.simulatedLogs() + " simulated logs, seed "
                + comparison.request().run().seed();
    }

    private List<String> account() {
        return List.of(
                "A coil change of the log reaches from the instant at which its tail stops until the next tail stops; it ran"
                        + " through when no stop of the line began in it. The simulated lines left logs, too, which were read by"
                        + " the same rules, and each was as long as that of the line.",
                "The model fits when the share run through lies where 95 % of the simulated logs have it: a model that is"
                        + " right fails this one time in twenty. The other figures are each tested so that a false alarm in any of"
                        + " them comes one time in twenty (Bonferroni's correction, "
                        + (LogFigure.values().length - 1) + " tests).",
                "The interval of the logged share is Wilson's (R. G. Newcombe, Statistics in Medicine 17, 1998, method 3), which"
                        + " takes coil changes as independent; that of the model comes from the simulated logs and takes no such"
                        + " thing.");
    }

    private FigureComparison share() {
        return comparison.of(LogFigure.SHARE_RUN_THROUGH);
    }

    private int changes() {
        return comparison.log().changes().size();
    }
}
