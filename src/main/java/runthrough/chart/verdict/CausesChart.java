package runthrough.chart.verdict;

import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.Palette;
import runthrough.study.cause.NamedCauses;

/** Causes of the coil changes that did not run through (a Pareto): for each its part of all stops and of all lost time. Rule CAUSE-9. */
final class CausesChart {
    private static final int MOST = 10;
    private static final double HEIGHT = 0.34;
    private static final int LONGEST_NAME = 56;
    /** A bar of 100 % and the number behind it. */
    private static final double ALL_WITH_ITS_NUMBER = 110;

    private static final String TITLE = "Causes: stops and lost time";

    private final ChartContext context;
    private final List<NamedCauses.Count> all;
    private final List<NamedCauses.Count> shown;

    private CausesChart(ChartContext context, List<NamedCauses.Count> causes) {
        this.context = context;
        this.all = causes;
        this.shown = causes.subList(0, Math.min(MOST, causes.size()));
    }

    /** The chart of {@code causes}, of which there are some, those of most coil changes first. */
    static Chart of(ChartContext context, List<NamedCauses.Count> causes) {
        return new CausesChart(context, causes).chart();
    }

    private Chart chart() {
        SymbolAxis rows =
                context.style().rows(shown.stream().map(CausesChart::name).toList());
        NumberAxis share = context.style().axis("part of all, %");
        share.setRange(0, ALL_WITH_ITS_NUMBER);
        share.setTickUnit(new NumberTickUnit(20));
        XYPlot plot = context.style().plot(share, rows);
        plot.setRangeGridlinesVisible(false);
        double stops = Math.max(
                1, all.stream().mapToLong(NamedCauses.Count::starvedStops).sum());
        double lost = Math.max(
                1e-9, all.stream().mapToDouble(NamedCauses.Count::lostTime).sum());
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        data.addSeries(bars("stops", stops, true, plot));
        data.addSeries(bars("lost time", lost, false, plot));
        plot.setDataset(data);
        plot.setRenderer(renderer());
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartStyle.box("stops", Palette.SHORT));
        legend.add(ChartStyle.box("lost time", Palette.SLOWED));
        String reading = reading();
        return new Chart(
                "causes",
                TITLE,
                reading,
                "Two bars for each cause, its part of all stops and of all lost time. " + reading,
                context.style().picture(TITLE, plot, legend, 130 + 40 * shown.size()));
    }

    private XYIntervalSeries bars(String key, double whole, boolean isStops, XYPlot plot) {
        XYIntervalSeries series = new XYIntervalSeries(key, false, true);
        for (int row = 0; row < shown.size(); row++) {
            NamedCauses.Count cause = shown.get(row);
            double part = 100 * (isStops ? cause.starvedStops() : cause.lostTime()) / whole;
            double from = isStops ? row - HEIGHT : row;
            series.add(0, 0, part, row, from, from + HEIGHT);
            String text = "  " + (isStops ? Long.toString(cause.starvedStops()) : Math.round(part) + " %");
            context.style().name(plot, text, part, from + HEIGHT / 2, TextAnchor.CENTER_LEFT);
        }
        return series;
    }

    private static XYBarRenderer renderer() {
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setUseYInterval(true);
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(true);
        renderer.setSeriesPaint(0, Palette.SHORT);
        renderer.setSeriesPaint(1, Palette.SLOWED);
        for (int series = 0; series < 2; series++) {
            renderer.setSeriesOutlinePaint(series, Palette.EDGE);
            renderer.setSeriesOutlineStroke(series, Palette.HAIR);
        }
        return renderer;
    }

    private String reading() {
        NamedCauses.Count first = shown.get(0);
        return "Most coil changes that did not run through: " + first.reason().words() + ", " + first.changes() + " of "
                + all.stream().mapToLong(NamedCauses.Count::changes).sum() + ", with " + first.starvedStops()
                + " stops"
                + (all.size() > MOST ? "; the " + MOST + " causes of most of " + all.size() + " are shown." : ".");
    }

    private static String name(NamedCauses.Count count) {
        String name = count.reason().words();
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 3) + "...";
    }
}
