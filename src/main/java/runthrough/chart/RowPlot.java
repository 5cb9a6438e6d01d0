package runthrough.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** One panel of a chart that has a row for each of several things: a value in each row, with its interval and in words. */
public final class RowPlot {
    private static final BasicStroke BAR = new BasicStroke(16, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    private static final double TICK = 0.1;
    /** How far above its row the words stand, in rows. */
    private static final double WORDS = 0.2;

    private final ChartStyle style;
    private final NumberAxis axis;
    private final XYPlot plot;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private int datasets;

    public RowPlot(ChartStyle style, String label) {
        this.style = style;
        this.axis = style.axis(label);
        this.plot = style.plot(axis, style.axis(""));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    }

    /** A bar from zero to {@code value}. */
    public void bar(int row, double value, Color colour) {
        see(0);
        see(value);
        line(0, row, value, row, colour, BAR);
    }

    /** An interval, its ends marked by strokes. */
    public void interval(int row, double low, double high) {
        see(low);
        see(high);
        line(low, row, high, row, Palette.PROCESS, Palette.SOLID);
        line(low, row - TICK, low, row + TICK, Palette.PROCESS, Palette.SOLID);
        line(high, row - TICK, high, row + TICK, Palette.PROCESS, Palette.SOLID);
    }

    /** A mark; hollow ones are white within. */
    public void mark(int row, double value, Shape shape, Color colour, boolean filled) {
        see(value);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesShape(0, shape);
        renderer.setSeriesPaint(0, colour);
        renderer.setUseFillPaint(true);
        renderer.setSeriesFillPaint(0, filled ? colour : Color.WHITE);
        renderer.setDrawOutlines(true);
        renderer.setSeriesOutlineStroke(0, Palette.SOLID);
        XYSeries series = new XYSeries("");
        series.add(value, row);
        add(new XYSeriesCollection(series), renderer);
    }

    /** The value of a row in words, above its mark or bar. */
    public void words(int row, double value, String text) {
        boolean isInRightHalf = value > (axis.getLowerBound() + axis.getUpperBound()) / 2;
        TextAnchor anchor = isInRightHalf ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT;
        style.name(plot, text, value, row - WORDS, anchor);
    }

    /** A value that counts for all rows. */
    public void upright(double value, Color colour, Stroke stroke) {
        see(value);
        ValueMarker marker = new ValueMarker(value, colour, stroke);
        marker.setAlpha(1);
        plot.addDomainMarker(marker, Layer.BACKGROUND);
    }

    /** Lets the axis reach a little beyond what was seen, but not beyond {@code floor} and {@code ceiling}. */
    public void within(double floor, double ceiling) {
        double span = Math.max(greatest - least, Math.max(1e-3 * Math.abs(greatest), 1e-9));
        double from = Math.max(floor, least - 0.08 * span);
        double to = Math.min(ceiling, greatest + 0.08 * span);
        axis.setRange(from, to > from ? to : from + span);
    }

    public XYPlot plot() {
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
    private void add(XYSeriesCollection data, XYLineAndShapeRenderer renderer) {
        plot.setDataset(datasets, data);
        plot.setRenderer(datasets, renderer);
        datasets++;
    }

    private void see(double value) {
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
    }
}
