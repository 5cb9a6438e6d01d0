package runthrough.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.jspecify.annotations.Nullable;

/** A curve with its band, limits across it and marks on it, each named in the legend: what the charts of studies consist of. */
public final class CurvePlot {
    /** The band about the curve: the blue of the curve, mostly white. */
    public static final Color BAND = new Color(0xD6E8F5);

    public static final Shape CIRCLE = new Ellipse2D.Double(-6, -6, 12, 12);
    public static final Shape DIAMOND = diamond();

    private final LegendItemCollection legend;
    private final XYPlot plot;
    private final ValueAxis range;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private int datasets;

    public CurvePlot(ChartStyle style, LegendItemCollection legend, @Nullable NumberAxis domain, String rangeLabel) {
        this(style, legend, domain, style.axis(rangeLabel));
    }

    /** A plot with an upright axis of the caller's; without a {@code domain} it shares that of others. */
    public CurvePlot(ChartStyle style, LegendItemCollection legend, @Nullable NumberAxis domain, ValueAxis range) {
        this.legend = legend;
        this.range = range;
        this.plot = style.plot(domain, range);
    }

    /** A point of a curve and its 95 % interval, all in the units shown. */
    public record Point(double x, double y, double low, double high) {

        /** The same, nothing of it below {@code floor}. */
        public Point atLeast(double floor) {
            return new Point(x, Math.max(floor, y), Math.max(floor, low), Math.max(floor, high));
        }
    }

    /** The curve, over its band. */
    public void curve(String name, List<Point> points, String bandName) {
        band(points, BAND);
        legend.add(ChartStyle.line(name, Palette.LEVEL, Palette.BOLD));
        if (!bandName.isEmpty()) {
            legend.add(ChartStyle.box(bandName, BAND));
        }
    }

    /** A curve over two nested bands, each with a colour of its own. */
    public void bands(
            String name,
            List<Point> outer,
            String outerName,
            Color outerColour,
            List<Point> inner,
            String innerName,
            Color innerColour) {
        band(outer, outerColour);
        band(inner, innerColour);
        legend.add(ChartStyle.line(name, Palette.LEVEL, Palette.BOLD));
        legend.add(ChartStyle.box(innerName, innerColour));
        legend.add(ChartStyle.box(outerName, outerColour));
    }

    private void band(List<Point> points, Color colour) {
        YIntervalSeries series = new YIntervalSeries("", false, true);
        for (Point point : points) {
            series.add(point.x(), point.y(), point.low(), point.high());
            see(point.low());
            see(point.high());
        }
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        data.addSeries(series);
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(1);
        renderer.setSeriesFillPaint(0, colour);
        renderer.setSeriesPaint(0, Palette.LEVEL);
        renderer.setSeriesStroke(0, Palette.BOLD);
        add(data, renderer);
    }

    /** Another curve, without a band. */
    public void further(String name, double[] x, double[] y, Color colour, Stroke stroke) {
        XYSeries series = new XYSeries(name, false, true);
        for (int i = 0; i < x.length; i++) {
            series.add(x[i], y[i]);
            see(y[i]);
        }
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, colour);
        renderer.setSeriesStroke(0, stroke);
        add(new XYSeriesCollection(series), renderer);
        legend.add(ChartStyle.line(name, colour, stroke));
    }

    /** A line that is not measured but known. */
    public void known(String name, double x1, double y1, double x2, double y2) {
        see(y1);
        see(y2);
        line(x1, y1, x2, y2, Palette.FAINT, Palette.DOTS);
        legend.add(ChartStyle.line(name, Palette.FAINT, Palette.DOTS));
    }

    /** An interval on the axis below, drawn at the height {@code y} with its ends marked by strokes of height {@code tick}. */
    public void interval(double from, double to, double y, double tick) {
        line(from, y, to, y, Palette.EDGE, new BasicStroke(3));
        line(from, y - tick, from, y + tick, Palette.EDGE, Palette.BOLD);
        line(to, y - tick, to, y + tick, Palette.EDGE, Palette.BOLD);
    }

    /** What must be reached, or must not be passed. */
    public void across(String name, double y) {
        see(y);
        ValueMarker marker = new ValueMarker(y, Palette.LIMIT, Palette.LONG_DASHES);
        marker.setAlpha(1);
        plot.addRangeMarker(marker, Layer.FOREGROUND);
        legend.add(ChartStyle.line(name, Palette.LIMIT, Palette.LONG_DASHES));
    }

    /** A value on the axis below; without a name when it is named elsewhere. */
    public void upright(String name, double x, Color colour, Stroke stroke) {
        ValueMarker marker = new ValueMarker(x, colour, stroke);
        marker.setAlpha(1);
        plot.addDomainMarker(marker, Layer.FOREGROUND);
        if (!name.isEmpty()) {
            legend.add(ChartStyle.line(name, colour, stroke));
        }
    }

    /** A region of the axis below. */
    public void shade(String name, double from, double to) {
        IntervalMarker region = new IntervalMarker(from, to, Palette.RUN_OUT);
        region.setAlpha(1);
        plot.addDomainMarker(region, Layer.BACKGROUND);
        if (!name.isEmpty()) {
            legend.add(ChartStyle.box(name, Palette.RUN_OUT));
        }
    }

    /** A mark; without a name when it is named elsewhere. */
    public void mark(String name, double x, double y, Shape shape, Color colour) {
        see(y);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesShape(0, shape);
        renderer.setSeriesPaint(0, colour);
        XYSeries series = new XYSeries(name);
        series.add(x, y);
        add(new XYSeriesCollection(series), renderer);
        if (!name.isEmpty()) {
            legend.add(ChartStyle.mark(name, colour, shape));
        }
    }

    /** The plot, with its upright axis as it is. */
    public XYPlot asItIs() {
        return plot;
    }

    /** The plot; its axis reaches a little beyond what was seen, but not beyond {@code floor} and {@code ceiling}. */
    public XYPlot within(double floor, double ceiling) {
        double room = 0.06 * Math.max(greatest - least, 1e-3 * Math.abs(greatest));
        ChartStyle.reach(range, Math.max(floor, least - room), Math.min(ceiling, greatest + room));
        return plot;
    }

    private void line(double x1, double y1, double x2, double y2, Color colour, Stroke stroke) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setSeriesPaint(0, colour);
        renderer.setSeriesStroke(0, stroke);
        XYSeries series = new XYSeries("", false, true);
        series.add(x1, y1);
        series.add(x2, y2);
        add(new XYSeriesCollection(series), renderer);
    }

    /** What comes first lies below. */
    private void add(XYDataset data, XYItemRenderer renderer) {
        plot.setDataset(datasets, data);
        plot.setRenderer(datasets, renderer);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        datasets++;
    }

    private void see(double y) {
        least = Math.min(least, y);
        greatest = Math.max(greatest, y);
    }

    private static Shape diamond() {
        Path2D path = new Path2D.Double();
        path.moveTo(0, -8);
        path.lineTo(8, 0);
        path.lineTo(0, 8);
        path.lineTo(-8, 0);
        path.closePath();
        return path;
    }
}
