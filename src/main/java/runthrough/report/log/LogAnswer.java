package runthrough.report.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import runthrough.chart.log.LogCharts;
import runthrough.linelog.LineLog;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Chapter;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.JsonFields;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.Texts;
import runthrough.report.described.InputTables;
import runthrough.report.write.CsvWriter;
import runthrough.study.logged.FigureComparison;
import runthrough.study.logged.LogComparison;
import runthrough.study.logged.LogComparison.Fit;
import runthrough.study.logged.LogFigure;

/** Shows whether the model fits the line, as its log shows it. */
public final class LogAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT = new AnswerFormat("log", 2, Subject.OF_LINES, LogDocument.SHAPE);

    private static final String JOINTS = "logged-coil-changes.csv";
    private static final String FIGURES = "logged-against-simulated.csv";

    private final LogComparison comparison;
    private final StudyWords words;

    private LogAnswer(LogComparison comparison) {
        this.comparison = comparison;
        this.words = StudyWords.of(comparison.request().resultsIn(), true);
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
                        List.of(table()),
                        List.of(Chapter.of("account", "How it was computed", account())),
                        Map.of(JOINTS, joints(), FIGURES, figuresCsv())),
                LogDocument.SHAPE.fields(comparison, true),
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
        return "Different: " + name(figure.figure()) + ", " + text(figure, figure.logged()) + " in the log, "
                + text(figure, figure.mean()) + " in the model.";
    }

    private List<Figure> figures() {
        FigureComparison share = share();
        FigureComparison joint = comparison.of(LogFigure.JOINT_CYCLE_TIME);
        FigureComparison stop = comparison.of(LogFigure.STOP_TIME);
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.words(
                "ran through, logged",
                words.texts().share(share.logged()),
                "95 % interval "
                        + shares(comparison.logged().low(), comparison.logged().high())));
        figures.add(Figure.words("ran through, model", words.texts().share(share.mean()), range(share)));
        figures.add(Figure.words("joint cycle time, logged", words.texts().time(joint.logged()), "on average"));
        figures.add(Figure.words("joint cycle time, model", words.texts().time(joint.mean()), range(joint)));
        if (stop.isKnown()) {
            figures.add(Figure.words("a stop lasts, logged", words.texts().time(stop.logged()), "on average"));
            figures.add(Figure.words("a stop lasts, model", words.texts().time(stop.mean()), range(stop)));
        }
        return figures;
    }

    private String range(FigureComparison figure) {
        return comparison.simulatedLogs() == 1
                ? ""
                : "95 % of logs " + number(figure, figure.low()) + " to " + text(figure, figure.high());
    }

    private String number(FigureComparison figure, double value) {
        return notation(figure).number(figure.figure() == LogFigure.STOPS_PER_CHANGE ? 100 * value : value);
    }

    private Table table() {
        List<List<String>> rows = comparison.figures().stream()
                .map(figure -> List.of(
                        name(figure.figure()),
                        Double.isNaN(figure.logged()) ? "none" : text(figure, figure.logged()),
                        figure.simulated().isEmpty() ? "none" : text(figure, figure.mean()),
                        figure.simulated().isEmpty() || comparison.simulatedLogs() == 1
                                ? ""
                                : text(figure, figure.low()) + " to " + text(figure, figure.high()),
                        !figure.isKnown() ? "" : differs(figure) ? "differs" : "agrees"))
                .toList();
        return Table.words(
                "What the line logged, and what the model gives",
                List.of("", "logged", "model", "95 % of simulated logs", ""),
                rows,
                true);
    }

    /** The share by its own test; the others by one that gives a false alarm in any of them one time in twenty. */
    private boolean differs(FigureComparison figure) {
        return figure.figure() == LogFigure.SHARE_RUN_THROUGH
                ? comparison.fit() != Fit.FITS
                : comparison.differing().contains(figure);
    }

    private String name(LogFigure figure) {
        boolean rethread = !comparison.request().line().practice().hasJoiner();
        String joint = rethread ? "standing time" : "joint cycle time";
        return switch (figure) {
            case SHARE_RUN_THROUGH -> "ran through";
            case STOPS_PER_CHANGE -> "stops per 100 coil changes";
            case STOP_TIME -> "a stop lasts";
            case UNTIL_RESTART -> "from release to restart";
            case JOINT_CYCLE_TIME -> joint + ", mean";
            case LONG_JOINT_CYCLE_TIME -> joint + ", 90 % at most";
            case CYCLE -> "from tail to next tail";
        };
    }

    /** The same for all numbers of a figure. */
    private Notation notation(FigureComparison figure) {
        return figure.figure() == LogFigure.STOPS_PER_CHANGE
                ? Notation.PLAIN
                : words.texts().notation(figure.figure().kind(), figure.isKnown() ? figure.high() : 1);
    }

    private String text(FigureComparison figure, double value) {
        return notation(figure).text(figure.figure() == LogFigure.STOPS_PER_CHANGE ? 100 * value : value);
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

    private String joints() {
        return CsvWriter.of(
                List.of(
                        "coil",
                        "tail stopped (s)",
                        "joint released (s)",
                        "joint cycle time (s)",
                        "ran through",
                        "stops",
                        "stood (s)",
                        "from release to restart (s)",
                        "from release to next tail (s)"),
                comparison.log().changes().stream()
                        .map(change -> List.of(
                                CsvWriter.text(change.joint().coil()),
                                CsvWriter.number(change.joint().tailStopped()),
                                CsvWriter.number(change.joint().released()),
                                CsvWriter.number(change.joint().time()),
                                change.ranThrough() ? "yes" : "no",
                                Integer.toString(change.stops().size()),
                                CsvWriter.number(change.stops().stream()
                                        .mapToDouble(LineLog.Stop::duration)
                                        .sum()),
                                CsvWriter.number(change.untilRestart()),
                                CsvWriter.number(change.coilRun())))
                        .toList());
    }

    private String figuresCsv() {
        return CsvWriter.of(
                List.of("figure", "logged", "model", "95 % low", "95 % high", "share no greater", "share no less"),
                comparison.figures().stream()
                        .map(figure -> Stream.concat(
                                        Stream.of(JsonFields.word(figure.figure())),
                                        Stream.of(
                                                        figure.logged(),
                                                        figure.mean(),
                                                        figure.low(),
                                                        figure.high(),
                                                        figure.atMost(),
                                                        figure.atLeast())
                                                .map(CsvWriter::number))
                                .toList())
                        .toList());
    }

    private FigureComparison share() {
        return comparison.of(LogFigure.SHARE_RUN_THROUGH);
    }

    private int changes() {
        return comparison.log().changes().size();
    }
}
