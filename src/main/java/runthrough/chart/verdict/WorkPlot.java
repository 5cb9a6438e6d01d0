package runthrough.chart.verdict;

import java.awt.Color;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import runthrough.chart.ChartStyle;
import runthrough.chart.Palette;

/** Draws the bars of work over a time axis that it shares with other plots. */
final class WorkPlot {
    private static final double HALF_HEIGHT = 0.36;
    private static final int LONGEST_NAME = 26;

    private WorkPlot() {}

    /** The plot; adds what it shows to the legend of {@code time}. */
    static XYPlot of(WorkBars bars, ChartStyle style, TracePlots time) {
        SymbolAxis axis =
                style.rows(bars.rows().stream().map(WorkPlot::shortened).toList());
        XYPlot plot = style.plot(null, axis);
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setUseYInterval(true);
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(true);
        for (WorkBars.Sort sort : WorkBars.Sort.values()) {
            XYIntervalSeries series = series(bars, sort, time);
            if (!series.isEmpty()) {
                renderer.setSeriesPaint(data.getSeriesCount(), colour(sort));
                renderer.setSeriesOutlinePaint(data.getSeriesCount(), Palette.TEXT);
                renderer.setSeriesOutlineStroke(data.getSeriesCount(), Palette.HAIR);
                data.addSeries(series);
                time.legend().add(ChartStyle.box(label(sort, bars), colour(sort)));
            }
        }
        plot.setDataset(data);
        plot.setRenderer(renderer);
        double left = time.x(bars.from());
        bars.rowsDoneBefore().forEach(row -> style.name(plot, " done before", left, row, TextAnchor.CENTER_LEFT));
        bars.rowsNotDone()
                .forEach(row -> style.name(plot, " not at this coil change", left, row, TextAnchor.CENTER_LEFT));
        return plot;
    }

    private static XYIntervalSeries series(WorkBars bars, WorkBars.Sort sort, TracePlots time) {
        XYIntervalSeries series = new XYIntervalSeries(sort, false, true);
        for (WorkBars.Bar bar : bars.bars()) {
            if (bar.sort() == sort) {
                double start = time.x(bar.start());
                double end = time.x(bar.end());
                int row = bar.row();
                series.add((start + end) / 2, start, end, row, row - HALF_HEIGHT, row + HALF_HEIGHT);
            }
        }
        return series;
    }

    private static Color colour(WorkBars.Sort sort) {
        return switch (sort) {
            case PREPARE -> Palette.PREPARE;
            case TAIL -> Palette.TAIL;
            case JOIN -> Palette.JOIN;
            case WAITING -> Palette.LIMIT;
            case OTHER_CHANGE -> Palette.OTHER;
        };
    }

    private static String label(WorkBars.Sort sort, WorkBars bars) {
        return switch (sort) {
            case PREPARE -> "prepare the next coil";
            case TAIL -> "tail work";
            case JOIN -> bars.isRethread() ? "rethread" : "join";
            case WAITING -> "waiting for " + bars.waitedFor();
            case OTHER_CHANGE -> "work for another coil change";
        };
    }

    private static String shortened(String name) {
        return name.codePointCount(0, name.length()) <= LONGEST_NAME
                ? name
                : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME - 1)) + "…";
    }
}
