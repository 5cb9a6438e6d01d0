package runthrough.chart;

import java.awt.Color;
import java.util.function.IntFunction;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/** The bars of a histogram; their heights are shares in percent. */
public final class HistogramBars {
    private HistogramBars() {}

    /** Puts the bars into {@code plot}; {@code colour} gives each bin's. */
    public static void put(XYPlot plot, Histogram histogram, IntFunction<Color> colour) {
        plot.setDomainGridlinesVisible(false);
        plot.setDataset(bars(histogram));
        plot.setRenderer(renderer(histogram, colour));
    }

    private static XYIntervalSeriesCollection bars(Histogram histogram) {
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        for (int i = 0; i < histogram.counts().size(); i++) {
            XYIntervalSeries series = new XYIntervalSeries(i, false, true);
            double share = 100 * histogram.share(i);
            double left = histogram.left(i);
            double right = histogram.left(i + 1);
            if (share > 0) {
                series.add((left + right) / 2, left, right, share, 0, share);
            }
            data.addSeries(series);
        }
        return data;
    }

    private static XYBarRenderer renderer(Histogram histogram, IntFunction<Color> colour) {
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(true);
        for (int i = 0; i < histogram.counts().size(); i++) {
            renderer.setSeriesPaint(i, colour.apply(i));
            renderer.setSeriesOutlinePaint(i, Palette.EDGE);
            renderer.setSeriesOutlineStroke(i, Palette.HAIR);
        }
        return renderer;
    }
}
