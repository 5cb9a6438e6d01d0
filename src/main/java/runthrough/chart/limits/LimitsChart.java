package runthrough.chart.limits;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.CurvePlot;
import runthrough.chart.Palette;

/** How far each number of a line can be driven: a bar from the line as it is to the limit, one below the other. */
public final class LimitsChart {
    private static final int ROW_HEIGHT = 62;
    private static final int AROUND = 150;

    /** Where in its row, from 0, a bar begins, ends and has its middle; the text stands above. */
    private static final double TOP = 0.02;

    private static final double BOTTOM = 0.34;
    private static final double MIDDLE = (TOP + BOTTOM) / 2;
    private static final double TEXT = -0.2;

    /** Where the line of the present value begins and ends. */
    private static final double ABOVE = -0.05;

    private static final double BELOW = 0.65;

    private static final double ROOM = 0.04;
    private static final Shape RING = new Ellipse2D.Double(-5.5, -5.5, 11, 11);

    private final ChartContext context;
    private final Axis axis;
    private final List<LimitRow> rows;
    private final double from;
    private final double to;

    private LimitsChart(ChartContext context, Axis axis, List<LimitRow> rows) {
        this.context = context;
        this.axis = axis;
        this.rows = rows;
        double least = values().min().orElse(axis.present());
        double greatest = values().max().orElse(axis.present());
        double room = ROOM * Math.max(greatest - least, axis.narrowest());
        this.from = Math.max(axis.least(), least - 2 * room);
        this.to = greatest + 2 * room;
    }

    /**
     * What the bars are drawn along.
     *
     * @param id of the chart
     * @param title of the chart
     * @param label of the axis
     * @param present where the line as it is lies on it
     * @param least that it can reach down to
     * @param far limits beyond this are not distinguished by eye; what matters lies near the line as it is
     * @param narrowest range of values
     */
    private record Axis(
            String id, String title, String label, double present, double least, double far, double narrowest) {}

    private static final Axis PARTS = new Axis(
            "limits", "How far each number can be driven, all others kept", "times the present value", 1, 0, 4, 0.2);

    private static final Axis SECONDS = new Axis(
            "limits-joint",
            "How far the joint cycle time can be driven, all else kept",
            "seconds on every pass of the join work; below 0: off it",
            0,
            Double.NEGATIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            1);

    /** How far each number can be driven, as parts of its present value; none where there is no row. */
    public static Optional<Chart> ofParts(ChartContext context, List<LimitRow> rows, String reading) {
        return of(context, PARTS, rows, reading);
    }

    /** The same of seconds on the work of a joint, of which there are none now. */
    public static Optional<Chart> ofSeconds(ChartContext context, List<LimitRow> rows, String reading) {
        return of(context, SECONDS, rows, reading);
    }

    private static Optional<Chart> of(ChartContext context, Axis axis, List<LimitRow> rows, String reading) {
        return rows.isEmpty() ? Optional.empty() : Optional.of(new LimitsChart(context, axis, rows).chart(reading));
    }

    private DoubleStream values() {
        return DoubleStream.concat(
                DoubleStream.of(axis.present()),
                rows.stream()
                        .flatMap(row -> Stream.of(row.limit(), row.low(), row.high(), row.closedForm()))
                        .flatMapToDouble(OptionalDouble::stream)
                        .map(this::near));
    }

    private double near(double value) {
        return Math.min(value, axis.far());
    }

    private Chart chart(String reading) {
        LegendItemCollection legend = new LegendItemCollection();
        NumberAxis domain = context.style().axis(axis.label());
        ChartStyle.reach(domain, from, to);
        XYPlot plot = context.style().plot(domain, names());
        plot.setRangeGridlinesVisible(false);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        bars(plot, 0, "margin up to the limit", Palette.ENOUGH, LimitRow::isSpare, legend);
        bars(plot, 1, "missing, back to the limit", Palette.SLOWED, row -> !row.isSpare(), legend);
        intervals(plot);
        marks(
                plot,
                2,
                CurvePlot.DIAMOND,
                Palette.EDGE,
                true,
                row -> row.isReached() ? row.limit() : OptionalDouble.empty());
        marks(plot, 3, RING, Palette.LIMIT, false, LimitRow::closedForm);
        for (int row = 0; row < rows.size(); row++) {
            // From below the text of a row to above that of the next.
            plot.addAnnotation(new XYLineAnnotation(
                    axis.present(),
                    row + ABOVE,
                    axis.present(),
                    Math.min(row + BELOW, rows.size() - 0.5),
                    Palette.SOLID,
                    Palette.PROCESS));
            context.style().name(plot, " " + rows.get(row).text(), from, row + TEXT, TextAnchor.CENTER_LEFT);
        }
        legend.add(ChartStyle.line("the line as it is", Palette.PROCESS, Palette.SOLID));
        legend.add(
                ChartStyle.mark("limit, with its 95 % interval where there is one", Palette.EDGE, CurvePlot.DIAMOND));
        legend.add(ChartStyle.ring("limit of the hand calculation", Palette.LIMIT, RING));
        return new Chart(
                axis.id(),
                axis.title(),
                reading,
                "A bar for each number, from its present value to the limit at which the target is lost, with marks for the"
                        + " limit and for that by closed form. " + reading,
                context.style().picture(axis.title(), plot, legend, AROUND + ROW_HEIGHT * rows.size()));
    }

    private SymbolAxis names() {
        SymbolAxis axis = new SymbolAxis(null, rows.stream().map(LimitRow::name).toArray(String[]::new));
        context.style().styled(axis);
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setInverted(true);
        axis.setGridBandsVisible(false);
        axis.setRange(-0.5, rows.size() - 0.5);
        return axis;
    }

    private void bars(
            XYPlot plot, int place, String name, Color colour, Predicate<LimitRow> which, LegendItemCollection legend) {
        XYIntervalSeries series = new XYIntervalSeries(name, false, true);
        for (int i = 0; i < rows.size(); i++) {
            LimitRow row = rows.get(i);
            if (which.test(row) && row.limit().isPresent()) {
                double limit = near(row.limit().getAsDouble());
                double now = axis.present();
                series.add(
                        (now + limit) / 2, Math.min(now, limit), Math.max(now, limit), i + MIDDLE, i + TOP, i + BOTTOM);
            }
        }
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        data.addSeries(series);
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setUseYInterval(true);
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(false);
        renderer.setSeriesPaint(0, colour);
        plot.setDataset(place, data);
        plot.setRenderer(place, renderer);
        if (!series.isEmpty()) {
            legend.add(ChartStyle.box(name, colour));
        }
    }

    private void intervals(XYPlot plot) {
        for (int i = 0; i < rows.size(); i++) {
            LimitRow row = rows.get(i);
            if (row.low().isPresent() && row.high().isPresent()) {
                double low = near(row.low().getAsDouble());
                double high = near(row.high().getAsDouble());
                line(plot, low, i + MIDDLE, high, i + MIDDLE, new BasicStroke(3));
                line(plot, low, i + TOP, low, i + BOTTOM, Palette.BOLD);
                line(plot, high, i + TOP, high, i + BOTTOM, Palette.BOLD);
            }
        }
    }

    private static void line(XYPlot plot, double x1, double y1, double x2, double y2, BasicStroke stroke) {
        plot.addAnnotation(new XYLineAnnotation(x1, y1, x2, y2, stroke, Palette.EDGE));
    }

    private void marks(XYPlot plot, int place, Shape shape, Color colour, boolean isFilled, RowValue value) {
        XYSeries series = new XYSeries(place, false, true);
        for (int i = 0; i < rows.size(); i++) {
            OptionalDouble x = value.of(rows.get(i));
            if (x.isPresent()) {
                series.add(near(x.getAsDouble()), i + MIDDLE);
            }
        }
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesShape(0, shape);
        renderer.setSeriesPaint(0, colour);
        renderer.setSeriesShapesFilled(0, isFilled);
        renderer.setSeriesOutlineStroke(0, Palette.BOLD);
        renderer.setSeriesStroke(0, Palette.BOLD);
        plot.setDataset(place, new XYSeriesCollection(series));
        plot.setRenderer(place, renderer);
    }

    /** A number of a row, where it has it. */
    @FunctionalInterface
    private interface RowValue {
        OptionalDouble of(LimitRow row);
    }
}
