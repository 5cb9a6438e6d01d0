package runthrough.report;

import java.util.List;

/**
 * The answer in words and numbers, without charts and tables: what a front door shows that draws for itself.
 *
 * @param mark the verdict
 * @param figures the numbers that matter most, in the order of {@link Figure}
 * @param messages what binds and what to change
 * @param hand the hand calculation
 */
public record AnswerSheet(
        ReportPage.Mark mark, List<Named> figures, ReportPage.Messages messages, ReportPage.Hand hand) {

    public AnswerSheet {
        figures = List.copyOf(figures);
    }

    /** Which number it is. */
    public enum Figure {
        SHARE,
        SPARE,
        STOPS,
        LOST,
        JOINT,
        OUTPUT
    }

    /** A number in words, and which it is. */
    public record Named(Figure which, ReportPage.KeyFigure figure) {}

    /** The answer of {@code result}. */
    public static AnswerSheet of(RunThroughResult result) {
        return PageMaker.sheet(result);
    }
}
