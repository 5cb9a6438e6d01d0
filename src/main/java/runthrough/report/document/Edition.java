package runthrough.report.document;

import java.util.Optional;
import runthrough.chart.Chart;

/**
 * What a document is made for: a screen, or pages of a size.
 *
 * @param printed the paper; empty for a screen
 */
public record Edition(Optional<Paper> printed) {
    /** Width of a drawing on a page (px, 96 to the inch): what both papers hold between their margins. */
    public static final int WIDTH = 640;

    static final Edition SCREEN = new Edition(Optional.empty());

    static Edition on(Paper paper) {
        return new Edition(Optional.of(paper));
    }

    /** Whether it has pages. */
    public boolean isPaged() {
        return printed.isPresent();
    }

    /** The paper; only where there are pages. */
    public Paper paper() {
        return printed.orElseThrow();
    }

    /** Height of {@code chart} on a page (px). */
    public int height(Chart chart) {
        return Math.round(
                chart.picture().height() * (float) WIDTH / chart.picture().width());
    }
}
