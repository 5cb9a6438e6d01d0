package runthrough.report.verdict;

import java.util.List;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Table;

/**
 * The answer in words and numbers, without what takes long to draw: what a front door shows that draws for itself.
 *
 * @param headline the verdict
 * @param figures the numbers that matter most, in the order of {@link Which}
 * @param limiting the limiting factor, in a sentence
 * @param margin at the target, in a sentence; empty where entry and process are one strip
 * @param changes what would help, a sentence each
 * @param coil which the hand calculation is for; empty where there is one kind only
 * @param limits of the hand calculation: name, available, needed and margin
 * @param givens what the hand calculation starts from
 * @param steps of the hand calculation
 */
public record AnswerSheet(
        Headline headline,
        List<Named> figures,
        String limiting,
        String margin,
        List<String> changes,
        String coil,
        Table limits,
        List<Given> givens,
        List<Worked> steps) {

    public AnswerSheet {
        figures = List.copyOf(figures);
        changes = List.copyOf(changes);
        givens = List.copyOf(givens);
        steps = List.copyOf(steps);
    }

    /** Which number it is. */
    public enum Which {
        SHARE,
        MARGIN,
        WITHOUT_STOP,
        MARGIN_WITHOUT_STOP,
        STOPS,
        LOST,
        JOINT,
        OUTPUT
    }

    /** A number, and which it is. */
    public record Named(Which which, Figure figure) {}

    /** What the hand calculation starts from. */
    public record Given(String name, Cell symbol, String value) {}

    /** A line of the hand calculation; its numbers are empty where there is nothing to put in. */
    public record Worked(String name, Cell.Formula formula, Cell.Formula numbers, String result) {}

    /** The answer of {@code result}. */
    public static AnswerSheet of(RunThroughResult result) {
        Diagnosis diagnosis = new Diagnosis(result);
        HandChapter hand = new HandChapter(result);
        return new AnswerSheet(
                VerdictHeadline.of(result),
                new VerdictFigures(result).named(),
                diagnosis.limiting(),
                diagnosis.margin().orElse(""),
                diagnosis.changes(),
                hand.coil(),
                hand.limits(),
                hand.givens(),
                hand.steps());
    }
}
