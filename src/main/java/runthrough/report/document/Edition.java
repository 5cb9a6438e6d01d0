package runthrough.report.document;

import java.util.Optional;
import runthrough.chart.Chart;

/**
 * What a document is made for: a screen, or pages of a size.
 *
 * @param printed the paper; empty for a screen
 * @param summary size of everything on the page to decide on, against the usual; more than 0, at most 1
 * @param isWhole whether it has its chapters; without, it ends with the contents and shows how long the page to decide on is
 */
public record Edition(Optional<Paper> printed, double summary, boolean isWhole) {
    /** Width of a drawing on a page (px, 96 to the inch): what both papers hold between their margins. */
    public static final int WIDTH = 640;

    static final Edition SCREEN = new Edition(Optional.empty(), 1, true);
    private static final double TYPE = 10;

    static Edition on(Paper paper, double summary) {
        return new Edition(Optional.of(paper), summary, true);
    }

    Edition withoutChapters() {
        return new Edition(printed, summary, false);
    }

    /** Whether it has pages. */
    public boolean isPaged() {
        return printed.isPresent();
    }

    /** The paper; only where there are pages. */
    public Paper paper() {
        return printed.orElseThrow();
    }

    /** Size of the type on the page to decide on (pt). */
    public double summarySize() {
        return TYPE * summary;
    }

    /** Width of the drawing on that page (px). */
    public int summaryWidth() {
        return (int) Math.round(WIDTH * summary);
    }

    /** Height of {@code chart} on a page where it is so many px wide (px). */
    public static int height(Chart chart, int width) {
        return Math.round(
                chart.picture().height() * (float) width / chart.picture().width());
    }
}
