package runthrough.report.verdict;

import java.util.List;
import runthrough.report.Figure;
import runthrough.report.Headline;

/**
 * The answer in words and numbers, without charts and tables: what a front door shows that draws for itself.
 *
 * @param mark the verdict
 * @param figures the numbers that matter most, in the order of {@link Figure}
 * @param messages what binds and what to change
 * @param hand the hand calculation
 */
public record AnswerSheet(Headline mark, List<Named> figures, ReportPage.Messages messages, ReportPage.Hand hand) {

    public AnswerSheet {
        figures = List.copyOf(figures);
    }

    /** Which number it is. */
    public enum Which {
        SHARE,
        SPARE,
        STOPS,
        LOST,
        JOINT,
        OUTPUT
    }

    /** A number in words, and which it is. */
    public record Named(Which which, Figure figure) {}

    /** The answer of {@code result}. */
    public static AnswerSheet of(RunThroughResult result) {
        return PageMaker.sheet(result);
    }
}
