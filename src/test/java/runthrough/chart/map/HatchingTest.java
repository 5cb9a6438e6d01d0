package runthrough.chart.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.data.Range;
import org.junit.jupiter.api.Test;

class HatchingTest {
    private static final Range ACROSS = new Range(100, 300);
    private static final Range UP = new Range(0, 10);

    private static List<String> corners(Path2D lines) {
        List<String> corners = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = lines.getPathIterator(null); !i.isDone(); i.next()) {
            corners.add(i.currentSegment(at) + " " + at[0] + " " + at[1]);
        }
        return corners;
    }

    @Test
    void linesAreTheSame_howeverFinelyTheAreaWasComputed() {
        Path2D whole = new Path2D.Double(new Rectangle2D.Double(200, 0, 100, 10));
        Path2D parts = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (int column = 0; column < 20; column++) {
            for (int row = 0; row < 10; row++) {
                parts.append(new Rectangle2D.Double(200 + 5 * column, row, 5, 1), false);
            }
        }

        assertThat(corners(Hatching.of(parts, ACROSS, UP, false)))
                .isEqualTo(corners(Hatching.of(whole, ACROSS, UP, false)))
                // The right half, which 60 of 79 lines cross: each begins and ends once.
                .hasSizeBetween(2 * 55, 2 * 62);
    }

    @Test
    void fallingAndRisingLinesDiffer_andNothingIsDrawnBesideTheArea() {
        Path2D left = new Path2D.Double(new Rectangle2D.Double(100, 0, 100, 10));
        Path2D falling = Hatching.of(left, ACROSS, UP, false);
        assertThat(corners(Hatching.of(left, ACROSS, UP, true))).isNotEqualTo(corners(falling));
        assertThat(falling.getBounds2D().getMaxX()).isLessThanOrEqualTo(200);
        assertThat(falling.getBounds2D().getMaxY()).isLessThanOrEqualTo(10);
    }
}
