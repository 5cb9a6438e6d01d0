package runthrough.chart.map;

import java.awt.Shape;
import java.awt.geom.Path2D;
import org.jfree.data.Range;

/** Parallel lines over an area of a plot, at a distance that does not depend on how finely the area was computed. */
final class Hatching {
    /** Lines that cross one side of the plot. */
    static final int LINES = 40;
    /** Places along a line at which it is looked whether the area is there: some pixels of a plot. */
    private static final int PLACES = 320;

    private Hatching() {}

    /**
     * The lines.
     *
     * @param area in the coordinates of the axes
     * @param across the range of the axis below
     * @param up the range of the upright axis
     * @param rises to the right, or falls
     */
    static Path2D of(Shape area, Range across, Range up, boolean rises) {
        Path2D lines = new Path2D.Double();
        for (int line = 1; line < 2 * LINES; line++) {
            boolean isDrawn = false;
            double lastX = 0;
            double lastY = 0;
            for (int place = 0; place <= PLACES; place++) {
                double x = (place + 0.5) / PLACES;
                double y = rises ? x + 1 - (double) line / LINES : (double) line / LINES - x;
                double shownX = across.getLowerBound() + x * across.getLength();
                double shownY = up.getLowerBound() + y * up.getLength();
                boolean isIn = place < PLACES && y >= 0 && y <= 1 && area.contains(shownX, shownY);
                if (isIn && !isDrawn) {
                    lines.moveTo(shownX, shownY);
                } else if (isDrawn && !isIn) {
                    lines.lineTo(lastX, lastY);
                }
                isDrawn = isIn;
                lastX = shownX;
                lastY = shownY;
            }
        }
        return lines;
    }
}
