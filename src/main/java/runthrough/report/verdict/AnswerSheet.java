package runthrough.report.verdict;

import java.util.List;
import runthrough.report.Cell;
import runthrough.report.Figure;
import runthrough.report.Headline;

/**
 * The answer in words and numbers, without what takes long to draw: what a front door shows that draws for itself.
 *
 * @param headline the verdict
 * @param allowed how often a coil change may be none that runs through; empty where no target is spoken of
 * @param figures the numbers that matter most, in the order of {@link Which}
 * @param limiting the limiting factor, in a sentence
 * @param margin at the target, in a sentence; empty where entry and process are one strip
 * @param changes what would help, a sentence each
 * @param coil which the hand calculation is for; empty where there is one kind only
 * @param limits of the hand calculation
 */
public record AnswerSheet(
        Headline headline,
        String allowed,
        List<Named> figures,
        String limiting,
        String margin,
        List<String> changes,
        String coil,
        List<Closed> limits) {

    public AnswerSheet {
        figures = List.copyOf(figures);
        changes = List.copyOf(changes);
        limits = List.copyOf(limits);
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

    /**
     * A number of the hand calculation.
     *
     * @param row name, available, needed and margin
     * @param givens what leads to it starts from
     * @param steps that lead to it; none where nothing is worked out
     */
    public record Closed(List<Cell> row, List<Given> givens, List<Worked> steps) {
        public Closed {
            row = List.copyOf(row);
            givens = List.copyOf(givens);
            steps = List.copyOf(steps);
        }
    }

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
                VerdictHeadline.allowed(result),
                new VerdictFigures(result).named(),
                diagnosis.limiting(),
                diagnosis.margin().orElse(""),
                diagnosis.changes(),
                hand.coil(),
                hand.closed());
    }
}
