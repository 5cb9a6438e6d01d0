package runthrough.chart.verdict;

import java.util.ArrayList;
import java.util.List;

/** Leaves out points that a picture cannot show. */
final class Thinning {
    private Thinning() {}

    /**
     * At most {@code most} of the points (in order of x). The width is cut into columns, and of each column the first, the
     * lowest, the highest and the last point are kept, so that no peak is lost.
     */
    static List<double[]> thinned(List<double[]> points, int most) {
        if (points.size() <= most) {
            return points;
        }
        int columns = most / 4;
        double from = points.get(0)[0];
        double width = (points.get(points.size() - 1)[0] - from) / columns;
        List<double[]> kept = new ArrayList<>();
        List<double[]> column = new ArrayList<>();
        int current = 0;
        for (double[] point : points) {
            int here = Math.min(columns - 1, (int) ((point[0] - from) / width));
            if (here != current) {
                keep(column, kept);
                column.clear();
                current = here;
            }
            column.add(point);
        }
        keep(column, kept);
        return kept;
    }

    private static void keep(List<double[]> column, List<double[]> kept) {
        int lowest = 0;
        int highest = 0;
        for (int i = 1; i < column.size(); i++) {
            lowest = column.get(i)[1] < column.get(lowest)[1] ? i : lowest;
            highest = column.get(i)[1] > column.get(highest)[1] ? i : highest;
        }
        for (int i = 0; i < column.size(); i++) {
            if (i == 0 || i == column.size() - 1 || i == lowest || i == highest) {
                kept.add(column.get(i));
            }
        }
    }
}
