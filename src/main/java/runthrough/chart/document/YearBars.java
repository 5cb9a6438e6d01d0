package runthrough.chart.document;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.function.Function;
import runthrough.chart.Palette;
import runthrough.chart.Pen;

/** Hours lost and good output of a year, the line as it is against its alternatives: a row each, both from 0. */
final class YearBars {
    private static final double LEFT = 60;
    private static final double LOST = 430;
    private static final double GOOD = 1000;
    private static final double GAP = 14;
    private static final double RIGHT = SummaryChart.WIDTH - 40;
    private static final double HEAD = 26;
    private static final double ROW = 58;
    private static final double CLOSE_ROW = 46;
    private static final int ROOMY_ROWS = 4;
    private static final float SIZE = 28;
    /** Names that are long stand smaller than the others; below this they are cut. */
    private static final float SMALLEST = 19;

    private final Pen pen;
    private final List<SummaryData.InYear> rows;
    private final int all;

    YearBars(Pen pen, List<SummaryData.InYear> rows) {
        this.pen = pen;
        this.rows = shown(rows);
        this.all = rows.size();
    }

    static int height(SummaryData data) {
        int count = shown(data.years()).size();
        return (int) (70 + HEAD + count * row(count));
    }

    private static List<SummaryData.InYear> shown(List<SummaryData.InYear> rows) {
        return rows.subList(0, Math.min(SummaryChart.MOST_ROWS, rows.size()));
    }

    private static double row(int count) {
        return count > ROOMY_ROWS ? CLOSE_ROW : ROW;
    }

    /** Draws them from {@code top} on and gives where they end. */
    double draw(double top) {
        double height = row(rows.size());
        String more = rows.size() < all ? ", " + rows.size() + " of " + all : "";
        bars(top, height, LOST, "Lost in a year" + more, Palette.RUN_OUT, Palette.LIMIT, SummaryData.InYear::lost);
        bars(top, height, GOOD, "Good output in a year", Palette.ENOUGH, Palette.EDGE, SummaryData.InYear::good);
        double y = top + HEAD + height / 2;
        for (SummaryData.InYear row : rows) {
            name(row, y);
            y += height;
        }
        return top + HEAD + rows.size() * height;
    }

    private void name(SummaryData.InYear row, double y) {
        double room = LOST - LEFT - 24;
        float size = SIZE;
        while (size > SMALLEST && pen.width(row.name(), size, row.today()) > room) {
            size--;
        }
        String name = pen.cut(row.name(), room, size, row.today());
        pen.text(name, LEFT, y + 10, Pen.Side.RIGHT_OF, size, row.today(), Palette.TEXT);
    }

    private void bars(
            double top,
            double height,
            double left,
            String title,
            Color fill,
            Color edge,
            Function<SummaryData.InYear, SummaryData.Amount> of) {
        pen.text(title, left, top, Pen.Side.RIGHT_OF, SIZE, true, Palette.TEXT);
        double most = rows.stream()
                .map(of)
                .mapToDouble(amount -> Math.max(amount.mean(), amount.high()))
                .max()
                .orElse(0);
        double right = left == LOST ? GOOD - 2 * GAP : RIGHT;
        double text = rows.stream()
                .mapToDouble(row -> pen.width(of.apply(row).text(), SIZE, row.today()))
                .max()
                .orElse(0);
        double wide = most > 0 ? (right - left - GAP - text) / most : 0;
        pen.line(left, top + HEAD, left, top + HEAD + rows.size() * height, Palette.TEXT, Palette.SOLID);
        double y = top + HEAD + height / 2;
        for (SummaryData.InYear row : rows) {
            bar(of.apply(row), left, wide, y, row.today(), fill, edge);
            y += height;
        }
    }

    private void bar(
            SummaryData.Amount amount, double left, double wide, double y, boolean today, Color fill, Color edge) {
        if (amount.mean() > 0) {
            pen.box(left, y - 15, amount.mean() * wide, 30, fill, edge, Palette.SOLID);
        }
        double low = left + amount.low() * wide;
        double high = left + amount.high() * wide;
        if (high > low) {
            pen.line(low, y, high, y, Palette.PROCESS, new BasicStroke(3, 0, 0));
            pen.line(low, y - 8, low, y + 8, Palette.PROCESS, new BasicStroke(3, 0, 0));
            pen.line(high, y - 8, high, y + 8, Palette.PROCESS, new BasicStroke(3, 0, 0));
        }
        double end = Math.max(left + amount.mean() * wide, high);
        pen.text(amount.text(), end + GAP, y + 10, Pen.Side.RIGHT_OF, SIZE, today, Palette.TEXT);
    }
}
