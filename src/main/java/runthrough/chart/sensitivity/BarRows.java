package runthrough.chart.sensitivity;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import runthrough.chart.ChartStyle;
import runthrough.chart.Palette;

/** Named rows with two bars each, one above the other, from zero to the left or right; with their intervals and words. */
final class BarRows {
    /** Which of the two bars of a row, or the row itself. */
    enum Half {
        UPPER(-1),
        MIDDLE(0),
        LOWER(1);

        private final int sign;

        Half(int sign) {
            this.sign = sign;
        }
    }

    private static final double HALF_HEIGHT = 0.19;
    private static final double OFF = 0.2;
    private static final double TICK = 0.08;
    private static final int ROW = 38;
    private static final int AROUND = 150;
    /** A longer name loses its beginning (characters). */
    static final int LONGEST_NAME = 42;
    /** Pixels between a bar and its words. */
    private static final double GAP = 7;

    private static final double EDGE = 1.02;
    /** Pixels of the picture that are neither names nor plot. */
    private static final double EDGES = 50;

    private final ChartStyle style;
    private final List<String> names;
    private final List<Bar> bars = new ArrayList<>();
    private final List<Words> words = new ArrayList<>();
    private final XYSeriesCollection intervals = new XYSeriesCollection();

    BarRows(ChartStyle style, List<String> names) {
        this.style = style;
        this.names = names.stream().map(BarRows::shortened).toList();
    }

    private record Bar(int row, Half half, double to, Color colour) {}

    private record Words(int row, Half half, double beyond, boolean left, String text) {}

    /** A long path says most at its end. */
    private static String shortened(String name) {
        int length = name.codePointCount(0, name.length());
        return length <= LONGEST_NAME
                ? name
                : "…" + name.substring(name.offsetByCodePoints(0, length - LONGEST_NAME + 1));
    }

    /** A bar from zero to {@code to}. */
    void bar(int row, Half half, double to, Color colour) {
        bars.add(new Bar(row, half, to, colour));
    }

    /** The interval of a bar's end. */
    void interval(int row, Half half, double low, double high) {
        double y = y(row, half);
        line(low, y, high, y);
        line(low, y - TICK, low, y + TICK);
        line(high, y - TICK, high, y + TICK);
    }

    /** Words beyond {@code x}, which is where a bar and its interval end. */
    void words(int row, Half half, double x, boolean left, String text) {
        words.add(new Words(row, half, x, left, text));
    }

    private static double y(int row, Half half) {
        return row + half.sign * OFF;
    }

    private void line(double x1, double y1, double x2, double y2) {
        XYSeries series = new XYSeries(intervals.getSeriesCount(), false, true);
        series.add(x1, y1);
        series.add(x2, y2);
        intervals.addSeries(series);
    }

    /** Height of the picture (px). */
    int height() {
        return AROUND + ROW * names.size();
    }

    /** The plot over an axis called {@code label}, wide enough for all words. */
    XYPlot plot(String label) {
        NumberAxis axis = style.axis(label);
        XYPlot plot = style.plot(axis, style.rows(names));
        plot.setRangeGridlinesVisible(false);
        plot.setDataset(0, intervals);
        plot.setRenderer(0, strokes());
        plot.setDataset(1, data());
        plot.setRenderer(1, filled());
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.REVERSE);
        ValueMarker zero = new ValueMarker(0, Palette.PROCESS, Palette.SOLID);
        zero.setAlpha(1);
        plot.addDomainMarker(zero, Layer.FOREGROUND);
        double perPixel = fit(axis);
        for (Words each : words) {
            double x = each.beyond + (each.left ? -GAP : GAP) * perPixel;
            TextAnchor anchor = each.left ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT;
            style.name(plot, each.text, x, y(each.row, each.half), anchor);
        }
        return plot;
    }

    /** Sets the range of the axis so that bars, intervals and words fit in; gives what a pixel is worth on it. */
    private double fit(NumberAxis axis) {
        double widest = names.stream().mapToDouble(style::width).max().orElse(0);
        double pixels = ChartStyle.WIDTH - widest - EDGES;
        double least = Math.min(0, ends(true));
        double greatest = Math.max(0, ends(false));
        double low = least;
        double high = greatest;
        // What words need depends on what a pixel is worth, and that on what they need: a few rounds settle it.
        for (int round = 0; round < 30; round++) {
            double perPixel = (high - low) / pixels;
            low = least;
            high = greatest;
            for (Words each : words) {
                double reach = (style.width(each.text) + 2 * GAP) * perPixel;
                low = Math.min(low, each.left ? each.beyond - reach : low);
                high = Math.max(high, each.left ? high : each.beyond + reach);
            }
        }
        // Where nothing is written beyond the last bar, it still ends short of the edge.
        ChartStyle.reach(axis, low < 0 ? Math.min(low, EDGE * least) : low, Math.max(high, EDGE * greatest));
        return axis.getRange().getLength() / pixels;
    }

    private double ends(boolean least) {
        double end = 0;
        for (Bar bar : bars) {
            end = least ? Math.min(end, bar.to) : Math.max(end, bar.to);
        }
        for (int i = 0; i < intervals.getSeriesCount(); i++) {
            XYSeries series = intervals.getSeries(i);
            end = least ? Math.min(end, series.getMinX()) : Math.max(end, series.getMaxX());
        }
        return end;
    }

    private XYIntervalSeriesCollection data() {
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            XYIntervalSeries series = new XYIntervalSeries(i, false, true);
            double y = y(bar.row, bar.half);
            series.add(bar.to / 2, Math.min(0, bar.to), Math.max(0, bar.to), y, y - HALF_HEIGHT, y + HALF_HEIGHT);
            data.addSeries(series);
        }
        return data;
    }

    private XYBarRenderer filled() {
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setUseYInterval(true);
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(true);
        for (int i = 0; i < bars.size(); i++) {
            renderer.setSeriesPaint(i, bars.get(i).colour);
            renderer.setSeriesOutlinePaint(i, Palette.EDGE);
            renderer.setSeriesOutlineStroke(i, Palette.HAIR);
        }
        return renderer;
    }

    private XYLineAndShapeRenderer strokes() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (int i = 0; i < intervals.getSeriesCount(); i++) {
            renderer.setSeriesPaint(i, Palette.LIMIT);
            renderer.setSeriesStroke(i, Palette.SOLID);
        }
        return renderer;
    }
}
