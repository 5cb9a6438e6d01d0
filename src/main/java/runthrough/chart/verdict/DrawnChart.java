package runthrough.chart.verdict;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.OutcomeStyle;
import runthrough.chart.Palette;
import runthrough.quantity.Unit;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.study.statistics.Sample;

/** Strip drawn at each coil change against its joint cycle time, below what the accumulator can give. */
final class DrawnChart {
    /** Points nearer to each other than this share of the picture look like one. */
    private static final double GRAIN = 1.0 / 220;
    /** Joint cycle times beyond this many times the longest that ran through stand at the right edge: else nothing else were seen. */
    private static final double FAR = 4;

    private final ChartContext context;
    private final List<ChangeRecord> changes;
    private final Unit unit;
    private final double capacity;
    private final double available;
    private final Sample drawn;
    private final double longestShown;
    private final Unit clock;

    private DrawnChart(ChartContext context, List<ChangeRecord> changes) {
        this.context = context;
        this.changes = changes;
        this.unit = context.units().length();
        this.capacity = context.line().accumulator().capacity();
        this.available = capacity - context.line().stopLevel(context.line().fastestRatedSpeed());
        this.drawn = sample(ChangeRecord::stripDrawn);
        double longest = joints().percentile(1);
        double far = changes.stream()
                .filter(change -> change.outcome() == Outcome.RAN_THROUGH)
                .mapToDouble(change -> FAR * change.jointCycleTime())
                .max()
                .orElse(longest);
        this.longestShown = changes.stream()
                .mapToDouble(ChangeRecord::jointCycleTime)
                .filter(joint -> joint <= far)
                .max()
                .orElse(longest);
        this.clock = ChartUnits.clock(longestShown + room());
    }

    /** The chart of the coil changes of one replication. */
    static Chart of(ChartContext context, List<ChangeRecord> changes) {
        return new DrawnChart(context, changes).chart();
    }

    private Chart chart() {
        LegendItemCollection legend = new LegendItemCollection();
        XYPlot plot = context.style().plot(timeAxis(), stripAxis());
        double top = plot.getRangeAxis().getUpperBound();
        points(plot, legend);
        noteBeyond(plot);
        if (top > unit.fromSi(available)) {
            IntervalMarker region = new IntervalMarker(unit.fromSi(available), top, Palette.RUN_OUT);
            region.setAlpha(1);
            plot.addRangeMarker(region, Layer.BACKGROUND);
        }
        across(plot, available, Palette.LIMIT, Palette.LONG_DASHES);
        across(plot, capacity, Palette.FAINT, Palette.DOTS);
        legend.add(ChartStyle.line(
                "most that a full accumulator gives before the process must " + end() + ": " + length(available),
                Palette.LIMIT,
                Palette.LONG_DASHES));
        legend.add(ChartStyle.line("capacity: " + length(capacity), Palette.FAINT, Palette.DOTS));
        String title = context.ofFirst("Strip drawn from the accumulator against joint cycle time");
        String reading = "The most strip drawn at a coil change is " + length(drawn.percentile(1))
                + "; a full accumulator gives " + length(Math.max(0, available)) + " before the process must " + end()
                + ".";
        String alternative = "One mark for each of " + changes.size()
                + " coil changes: joint cycle time across, strip drawn upwards, with lines at the capacity and at what may be "
                + "drawn. " + reading;
        return new Chart("drawn", title, reading, alternative, context.style().picture(title, plot, legend, 440));
    }

    /** A process that slows in time stops later. */
    private String end() {
        return context.line().process().slowing().isPresent() ? "stop without slowing" : "stop";
    }

    /** Free of points at either end of the time axis (s). */
    private double room() {
        return Math.max(0.06 * (longestShown - joints().percentile(0)), 0.02 * Math.max(longestShown, 1));
    }

    private NumberAxis timeAxis() {
        double shortest = joints().percentile(0);
        double room = room();
        NumberAxis axis = context.style().axis("joint cycle time, " + clock.symbol());
        ChartStyle.reach(axis, clock.fromSi(Math.max(0, shortest - room)), clock.fromSi(longestShown + room));
        return axis;
    }

    private NumberAxis stripAxis() {
        NumberAxis axis = context.style().axis("strip drawn, " + unit.symbol());
        ChartStyle.reach(axis, 0, unit.fromSi(1.08 * Math.max(capacity, drawn.percentile(1))));
        return axis;
    }

    private void points(XYPlot plot, LegendItemCollection legend) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setUseFillPaint(true);
        renderer.setUseOutlinePaint(true);
        renderer.setDrawOutlines(true);
        for (OutcomeStyle kind : OutcomeStyle.values()) {
            XYSeries series = series(plot, kind);
            int number = data.getSeriesCount();
            if (!series.isEmpty()) {
                renderer.setSeriesShape(number, kind.shape());
                renderer.setSeriesFillPaint(number, kind.colour());
                renderer.setSeriesOutlinePaint(number, Palette.EDGE);
                renderer.setSeriesOutlineStroke(number, Palette.HAIR);
                data.addSeries(series);
                legend.add(ChartStyle.mark(kind.label(), kind.colour(), kind.shape()));
            }
        }
        plot.setDataset(data);
        plot.setRenderer(renderer);
    }

    /** The points of one kind, those left out that would hide behind another; what lies beyond the right edge stands at it. */
    private XYSeries series(XYPlot plot, OutcomeStyle kind) {
        double grainX = plot.getDomainAxis().getRange().getLength() * GRAIN;
        double grainY = plot.getRangeAxis().getRange().getLength() * GRAIN;
        double atTheEdge = longestShown + room() / 2;
        XYSeries series = new XYSeries(kind, false, true);
        Set<Long> seen = new HashSet<>();
        for (ChangeRecord change : changes) {
            double x = clock.fromSi(Math.min(change.jointCycleTime(), atTheEdge));
            double y = unit.fromSi(change.stripDrawn());
            if (OutcomeStyle.of(change.outcome()) == kind
                    && seen.add(Math.round(x / grainX) << 32 | Math.round(y / grainY))) {
                series.add(x, y);
            }
        }
        return series;
    }

    /** Says what lies beyond the right edge. */
    private void noteBeyond(XYPlot plot) {
        long beyond = changes.stream()
                .filter(change -> change.jointCycleTime() > longestShown)
                .count();
        if (beyond == 0) {
            return;
        }
        String text = (beyond == 1
                        ? "1 coil change with a longer joint cycle time: "
                        : beyond + " coil changes with longer joint cycle times, up to ")
                + context.units().time(joints().percentile(1)) + " → ";
        double right = plot.getDomainAxis().getUpperBound();
        double low = 0.04 * plot.getRangeAxis().getUpperBound();
        context.style().name(plot, text, right, low, TextAnchor.CENTER_RIGHT);
    }

    private void across(XYPlot plot, double level, Color colour, BasicStroke stroke) {
        double from = plot.getDomainAxis().getLowerBound();
        double to = plot.getDomainAxis().getUpperBound();
        plot.addAnnotation(new XYLineAnnotation(from, unit.fromSi(level), to, unit.fromSi(level), stroke, colour));
    }

    private Sample joints() {
        return sample(ChangeRecord::jointCycleTime);
    }

    private Sample sample(ToDoubleFunction<ChangeRecord> value) {
        return Sample.of(changes.stream().mapToDouble(value).toArray());
    }

    private String length(double metres) {
        return context.units().length(metres);
    }
}
