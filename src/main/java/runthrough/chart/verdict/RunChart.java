package runthrough.chart.verdict;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
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
import runthrough.chart.OutcomeStyle;
import runthrough.chart.Palette;
import runthrough.quantity.Unit;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;

/**
 * The whole run at a glance: a bar for each coil change from the level at its start down to the lowest level, and the stop
 * level. Where there are more than have room side by side, or shifts to be compared, they stand in the order of {@link RunOrder},
 * as heights above the stop level, and a bar may stand for several: from the lowest level at a start down to the lowest of all.
 */
final class RunChart {
    static final int MOST_BARS = 240;
    /** So many bars and fewer have room for an edge, and can be distinguished in the order in which they came. */
    static final int FEW = 80;

    private static final double HALF_WIDTH = 0.36;
    /** Between the coil changes of two shifts, as a part of all. */
    private static final double GAP = 0.02;

    private static final int HEIGHT = 420;

    private final ChartContext context;
    private final RunOrder order;
    private final List<ChangeRecord> changes;
    private final Unit unit;
    /** Before the first coil change of each group on the axis; not used in the order of time. */
    private final double[] before;
    /** The one that {@link FeaturedChange} names in every chart: the first of equals in time. */
    private final ChangeRecord featured;

    private RunChart(ChartContext context, List<ChangeRecord> changes) {
        this.context = context;
        this.order = RunOrder.of(context.line(), changes, FEW);
        this.changes = order.all();
        this.unit = context.units().length();
        this.before = before(order.groups(), Math.ceil(GAP * changes.size()));
        this.featured = FeaturedChange.of(context, changes);
    }

    private static double[] before(List<List<ChangeRecord>> groups, double gap) {
        double[] before = new double[groups.size()];
        for (int group = 1; group < before.length; group++) {
            before[group] = before[group - 1] + groups.get(group - 1).size() + gap;
        }
        return before;
    }

    /** The chart of the coil changes of one replication. */
    static Chart of(ChartContext context, List<ChangeRecord> changes) {
        return new RunChart(context, changes).chart();
    }

    private Chart chart() {
        ChartStyle style = context.style();
        XYPlot plot = style.plot(changeAxis(), levelAxis());
        plot.setDomainGridlinesVisible(!order.isByShift());
        LegendItemCollection legend = new LegendItemCollection();
        lines(plot, legend);
        bars(plot, legend);
        if (order.isByShift()) {
            nameShifts(plot);
        }
        String title = context.ofFirst(
                order.inTime()
                        ? "Level over the whole run, at the start of each coil change and lowest"
                        : "Lowest level of each coil change above the stop level, "
                                + (order.isByShift() ? "shift by shift" : "lowest first"));
        String reading = reading();
        return new Chart(
                "run",
                title,
                reading,
                "One bar for each " + (together() == 1 ? "coil change" : together() + " coil changes")
                        + ", from the level at its start down to the lowest level, with the stop level as a line. "
                        + reading,
                style.picture(title, plot, legend, HEIGHT));
    }

    /** So many coil changes share a bar. */
    private int together() {
        return (changes.size() + MOST_BARS - 1) / MOST_BARS;
    }

    private NumberAxis changeAxis() {
        NumberAxis axis = context.style().axis(order.axis());
        ChartStyle.reach(
                axis,
                place(0, 0) - 1,
                place(order.groups().size() - 1, lastGroup().size() - 1) + 1);
        axis.setTickLabelsVisible(!order.isByShift());
        axis.setTickMarksVisible(!order.isByShift());
        return axis;
    }

    private List<ChangeRecord> lastGroup() {
        return order.groups().get(order.groups().size() - 1);
    }

    private NumberAxis levelAxis() {
        double top = Math.max(order.inTime() ? capacity() : 0, most(changes, c -> shown(c, c.levelAtStart())));
        double bottom = Math.min(0, -most(changes, c -> -shown(c, c.lowestLevel())));
        NumberAxis axis =
                context.style().axis((order.inTime() ? "level, " : "level above the stop level, ") + unit.symbol());
        ChartStyle.reach(axis, unit.fromSi(bottom - 0.03 * (top - bottom)), unit.fromSi(top + 0.1 * (top - bottom)));
        return axis;
    }

    private double capacity() {
        return context.line().accumulator().capacity();
    }

    /** A level as it is shown: in another order than that of time, above the stop level, which may differ from coil to coil. */
    private double shown(ChangeRecord change, double level) {
        return order.inTime() ? level : level - change.stopLevel();
    }

    /** Where the coil change {@code index} of {@code group} stands on the axis. */
    private double place(int group, int index) {
        return order.inTime() ? order.groups().get(group).get(index).number() : before[group] + index + 1;
    }

    private void lines(XYPlot plot, LegendItemCollection legend) {
        XYSeries stop = new XYSeries("stop level", false, true);
        XYSeries full = new XYSeries("capacity", false, true);
        if (order.inTime()) {
            for (ChangeRecord change : changes) {
                for (double half : new double[] {-0.5, 0.5}) {
                    stop.add(change.number() + half, unit.fromSi(change.stopLevel()));
                    full.add(change.number() + half, unit.fromSi(capacity()));
                }
            }
        } else {
            stop.add(plot.getDomainAxis().getLowerBound(), 0);
            stop.add(plot.getDomainAxis().getUpperBound(), 0);
        }
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, Palette.LIMIT);
        renderer.setSeriesStroke(0, Palette.LONG_DASHES);
        renderer.setSeriesPaint(1, Palette.FAINT);
        renderer.setSeriesStroke(1, Palette.DOTS);
        XYSeriesCollection data = new XYSeriesCollection(stop);
        data.addSeries(full);
        plot.setDataset(0, data);
        plot.setRenderer(0, renderer);
        legend.add(ChartStyle.line("stop level", Palette.LIMIT, Palette.LONG_DASHES));
        if (order.inTime()) {
            legend.add(ChartStyle.line("capacity", Palette.FAINT, Palette.DOTS));
        }
    }

    private void bars(XYPlot plot, LegendItemCollection legend) {
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setUseYInterval(true);
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(changes.size() <= FEW);
        for (Outcome outcome : Outcome.values()) {
            XYIntervalSeries series = bars(outcome);
            if (series.getItemCount() > 0) {
                OutcomeStyle style = OutcomeStyle.of(outcome);
                renderer.setSeriesOutlinePaint(data.getSeriesCount(), Palette.EDGE);
                renderer.setSeriesOutlineStroke(data.getSeriesCount(), Palette.HAIR);
                renderer.setSeriesPaint(data.getSeriesCount(), style.colour());
                data.addSeries(series);
                legend.add(ChartStyle.box(style.label(), style.colour()));
            }
        }
        plot.setDataset(1, data);
        plot.setRenderer(1, renderer);
    }

    private XYIntervalSeries bars(Outcome outcome) {
        XYIntervalSeries series = new XYIntervalSeries(outcome, false, true);
        int together = together();
        for (int group = 0; group < order.groups().size(); group++) {
            List<ChangeRecord> all = order.groups().get(group);
            for (int i = 0; i < all.size(); i += together) {
                int end = Math.min(all.size(), i + together);
                List<ChangeRecord> some = all.subList(i, end);
                if (worst(some) == outcome) {
                    add(series, some, place(group, i) - HALF_WIDTH, place(group, end - 1) + HALF_WIDTH);
                }
            }
        }
        return series;
    }

    private void add(XYIntervalSeries series, List<ChangeRecord> some, double first, double last) {
        double high = unit.fromSi(-most(some, c -> -shown(c, c.levelAtStart())));
        double low = unit.fromSi(-most(some, c -> -shown(c, c.lowestLevel())));
        series.add((first + last) / 2, first, last, high, low, high);
    }

    /** The name of each shift and how many coil changes it has, over them. */
    private void nameShifts(XYPlot plot) {
        double top = plot.getRangeAxis().getUpperBound();
        for (int group = 0; group < order.groups().size(); group++) {
            int count = order.groups().get(group).size();
            String name = order.names().get(group) + ": " + count;
            double middle = (place(group, 0) + place(group, count - 1)) / 2;
            context.style().name(plot, name, middle, top, TextAnchor.TOP_CENTER);
        }
    }

    private static Outcome worst(List<ChangeRecord> group) {
        return group.stream().map(ChangeRecord::outcome).max(Outcome::compareTo).orElseThrow();
    }

    private static double most(List<ChangeRecord> changes, ToDoubleFunction<ChangeRecord> value) {
        return changes.stream().mapToDouble(value).max().orElseThrow();
    }

    private String reading() {
        long failed =
                changes.stream().filter(c -> c.outcome() != Outcome.RAN_THROUGH).count();
        String which = failed == 0
                ? "All " + changes.size() + " coil changes run through"
                : failed + " of " + changes.size() + " coil changes do not run through";
        double above = featured.lowestAboveStopLevel();
        String level = context.line().process().slowing().isPresent() ? "stop level at the rated speed" : "stop level";
        return which + "; the level comes closest to the " + level + " at coil change " + featured.number() + ", "
                + context.units().length(Math.abs(above)) + (above < 0 ? " below it." : " above it.");
    }
}
