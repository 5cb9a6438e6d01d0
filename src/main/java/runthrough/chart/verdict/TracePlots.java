package runthrough.chart.verdict;

import java.awt.Color;
import java.awt.Stroke;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Palette;
import runthrough.plant.Line;
import runthrough.quantity.Unit;
import runthrough.simulation.records.ChangeRecord;

/** The two plots that share a time axis: level above speeds. Collects the legend as it draws. */
final class TracePlots {
    /** Room above the highest and below the lowest value, as share of the highest: a line on the frame is not seen. */
    private static final double ABOVE = 0.12;

    private static final double BELOW_ZERO = 0.03;

    private final ChartStyle style;
    private final Line line;
    private final TraceWindow window;
    private final ChartUnits units;
    private final Unit clock;
    private final double origin;
    private final TraceCurve curve;
    private final LegendItemCollection legend = new LegendItemCollection();

    /** Plots of {@code window}; time counts from {@code origin} (s). */
    TracePlots(ChartContext context, TraceWindow window, double origin) {
        this.style = context.style();
        this.line = context.line();
        this.window = window;
        this.units = context.units();
        this.clock = ChartUnits.clock(Math.max(Math.abs(window.to() - origin), Math.abs(window.from() - origin)));
        this.origin = origin;
        this.curve = new TraceCurve(window, clock, origin);
    }

    /** Level, capacity, stop level and, where the process can slow, the level at which it does. */
    XYPlot level(double capacity) {
        XYSeries measured = curve.level(units.length(), capacity);
        double top = Math.max(measured.getMaxY(), units.length().fromSi(capacity));
        NumberAxis axis = style.axis("level, " + units.length().symbol());
        ChartStyle.reach(axis, Math.min(0, measured.getMinY()) - BELOW_ZERO * top, top * (1 + ABOVE));
        XYPlot plot = style.plot(null, axis);
        Layers layers = new Layers(plot);
        layers.add(measured, "level", Palette.LEVEL, Palette.BOLD);
        layers.add(
                curve.steps("stop level", units.length(), p -> line.stopLevel(p.ratedSpeed())),
                line.process().slowing().isPresent()
                        ? "stop level at the rated speed"
                        : "stop level: below it the process must stop",
                Palette.LIMIT,
                Palette.LONG_DASHES);
        line.process()
                .slowing()
                .ifPresent(slowing -> layers.add(
                        curve.steps("slowing level", units.length(), p -> slowing.level()),
                        "slowing level",
                        Palette.SECONDARY,
                        Palette.DASH_DOT));
        layers.add(curve.steps("capacity", units.length(), p -> capacity), "capacity", Palette.FAINT, Palette.DOTS);
        return plot;
    }

    /** The two speeds, or the one of one strip. */
    XYPlot speeds() {
        XYSeries entry = curve.entrySpeed(units.speed());
        XYSeries process = curve.processSpeed(units.speed());
        NumberAxis axis = style.axis("speed, " + units.speed().symbol());
        double top = Math.max(
                Math.max(entry.getMaxY(), process.getMaxY()), units.speed().fromSi(1e-3));
        ChartStyle.reach(axis, -BELOW_ZERO * top, top * (1 + ABOVE));
        XYPlot plot = style.plot(null, axis);
        Layers layers = new Layers(plot);
        if (line.practice().isOneStrip()) {
            layers.add(process, "strip speed", Palette.PROCESS, Palette.SOLID);
        } else {
            layers.add(entry, "entry speed", Palette.ENTRY, Palette.DASHES);
            layers.add(process, "process speed", Palette.PROCESS, Palette.SOLID);
        }
        return plot;
    }

    /** Shades the time of each coil change, from its start until the joint is released. */
    void shadeChanges(XYPlot plot) {
        for (ChangeRecord change : window.changes()) {
            IntervalMarker marker = new IntervalMarker(x(change.start()), x(change.released()), Palette.CHANGE);
            marker.setAlpha(1);
            plot.addDomainMarker(marker, Layer.BACKGROUND);
        }
    }

    /** Writes the number of each coil change above the data, over the middle of its time. */
    void numberChanges(XYPlot plot) {
        double top = plot.getRangeAxis().getUpperBound();
        for (ChangeRecord change : window.changes()) {
            double middle =
                    (x(Math.max(window.from(), change.start())) + x(Math.min(window.to(), change.released()))) / 2;
            style.name(plot, Integer.toString(change.number()), middle, top, TextAnchor.TOP_CENTER);
        }
    }

    /** The axis of time that both plots share. */
    NumberAxis timeAxis(String after) {
        NumberAxis axis = style.axis("time " + after + ", " + clock.symbol());
        ChartStyle.reach(axis, x(window.from()), x(window.to()));
        return axis;
    }

    /** Where an instant (s of simulated time) stands on the time axis. */
    double x(double time) {
        return clock.fromSi(time - origin);
    }

    LegendItemCollection legend() {
        return legend;
    }

    /** Adds curves to a plot, each a data set of its own; the first is drawn last, in front. */
    private final class Layers {
        private final XYPlot plot;
        private int count;

        Layers(XYPlot plot) {
            this.plot = plot;
        }

        void add(XYSeries series, String label, Color colour, Stroke stroke) {
            XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
            renderer.setDrawSeriesLineAsPath(true);
            renderer.setSeriesPaint(0, colour);
            renderer.setSeriesStroke(0, stroke);
            plot.setDataset(count, new XYSeriesCollection(series));
            plot.setRenderer(count, renderer);
            count++;
            legend.add(ChartStyle.line(label, colour, stroke));
        }
    }
}
