package runthrough.chart.verdict;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
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

/**
 * The whole run at a glance: a bar for each coil change from the level at its start down to the lowest level, and the stop
 * level. With more coil changes than a picture can show, a bar stands for several: from the lowest level at a start down to
 * the lowest of all.
 */
final class RunChart {
    static final int MOST_BARS = 240;
    /** So many bars and fewer have room for an edge. */
    private static final int FEW = 80;

    private static final double HALF_WIDTH = 0.36;

    private RunChart() {}

    /** The chart of the coil changes of one replication. */
    static Chart of(ChartContext context, List<ChangeRecord> changes) {
        ChartStyle style = context.style();
        ChartUnits units = context.units();
        Unit unit = units.length();
        double capacity = context.line().accumulator().capacity();
        int together = (changes.size() + MOST_BARS - 1) / MOST_BARS;
        double top = Math.max(capacity, most(changes, ChangeRecord::levelAtStart));
        double bottom = Math.min(0, -most(changes, c -> -c.lowestLevel()));
        NumberAxis domain = style.axis("coil change");
        domain.setRange(
                changes.get(0).number() - 1.0, changes.get(changes.size() - 1).number() + 1.0);
        NumberAxis range = style.axis("level, " + unit.symbol());
        range.setRange(unit.fromSi(bottom - 0.03 * top), unit.fromSi(1.08 * top));
        XYPlot plot = style.plot(domain, range);
        LegendItemCollection legend = new LegendItemCollection();
        lines(plot, changes, capacity, unit, legend);
        bars(plot, changes, together, unit, legend);
        String title = context.ofFirst("Level over the whole run, at the start of each coil change and lowest");
        String reading = reading(context, changes);
        return new Chart(
                "run",
                title,
                reading,
                "One bar for each " + (together == 1 ? "coil change" : together + " coil changes")
                        + ", from the level at its start down to the lowest level, with the stop level as a line. "
                        + reading,
                style.picture(title, plot, legend, 420));
    }

    private static void lines(
            XYPlot plot, List<ChangeRecord> changes, double capacity, Unit unit, LegendItemCollection legend) {
        XYSeries stop = new XYSeries("stop level", false, true);
        XYSeries full = new XYSeries("capacity", false, true);
        for (ChangeRecord change : changes) {
            for (double half : new double[] {-0.5, 0.5}) {
                stop.add(change.number() + half, unit.fromSi(change.stopLevel()));
                full.add(change.number() + half, unit.fromSi(capacity));
            }
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
        legend.add(ChartStyle.line("capacity", Palette.FAINT, Palette.DOTS));
    }

    private static void bars(
            XYPlot plot, List<ChangeRecord> changes, int together, Unit unit, LegendItemCollection legend) {
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setUseYInterval(true);
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(changes.size() <= FEW);
        Outcome[] outcomes = Outcome.values();
        for (Outcome outcome : outcomes) {
            XYIntervalSeries series = new XYIntervalSeries(outcome, false, true);
            for (int i = 0; i < changes.size(); i += together) {
                List<ChangeRecord> group = changes.subList(i, Math.min(changes.size(), i + together));
                if (worst(group) == outcome) {
                    add(series, group, unit);
                }
            }
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

    private static void add(XYIntervalSeries series, List<ChangeRecord> group, Unit unit) {
        double first = group.get(0).number() - HALF_WIDTH;
        double last = group.get(group.size() - 1).number() + HALF_WIDTH;
        double high = unit.fromSi(-most(group, c -> -c.levelAtStart()));
        double low = unit.fromSi(-most(group, c -> -c.lowestLevel()));
        series.add((first + last) / 2, first, last, high, low, high);
    }

    private static Outcome worst(List<ChangeRecord> group) {
        return group.stream().map(ChangeRecord::outcome).max(Outcome::compareTo).orElseThrow();
    }

    private static double most(List<ChangeRecord> changes, ToDoubleFunction<ChangeRecord> value) {
        return changes.stream().mapToDouble(value).max().orElseThrow();
    }

    private static String reading(ChartContext context, List<ChangeRecord> changes) {
        long failed =
                changes.stream().filter(c -> c.outcome() != Outcome.RAN_THROUGH).count();
        ChangeRecord worst = FeaturedChange.of(context, changes);
        String which = failed == 0
                ? "All " + changes.size() + " coil changes run through"
                : failed + " of " + changes.size() + " coil changes do not run through";
        double above = worst.lowestAboveStopLevel();
        return which + "; the level comes closest to the stop level at coil change " + worst.number() + ", "
                + context.units().length(Math.abs(above)) + (above < 0 ? " below it." : " above it.");
    }
}
