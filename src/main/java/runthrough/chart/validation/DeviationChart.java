package runthrough.chart.validation;

import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartStyle;
import runthrough.chart.Histogram;
import runthrough.chart.HistogramBars;
import runthrough.chart.Palette;
import runthrough.quantity.Numbers;

/**
 * How far sampled values lie from the exact ones, in standard errors of theirs, beside what chance alone would give: values
 * that lie too near are as suspect as values too far.
 */
public final class DeviationChart {
    private static final int HEIGHT = 340;
    private static final double WIDTH = 0.5;
    private static final double FAR = 4;

    private DeviationChart() {}

    /**
     * The chart.
     *
     * @param id unique in its document
     * @param deviations sampled value less exact value, over the standard error; at least one
     */
    public static Chart of(String id, List<Double> deviations) {
        ChartStyle style = new ChartStyle();
        Histogram histogram = new Histogram(-FAR / WIDTH, WIDTH, counts(deviations), 0, 0, deviations.size());
        NumberAxis domain = style.axis("sampled less exact value, in standard errors");
        domain.setRange(-FAR, FAR);
        domain.setTickUnit(new NumberTickUnit(1));
        NumberAxis range = style.axis("share of all, %");
        range.setRange(0, 108 * Math.max(histogram.greatestShare(), WIDTH * density(0)));
        XYPlot plot = style.plot(domain, range);
        HistogramBars.put(plot, histogram, i -> Palette.ENOUGH);
        plot.setDataset(1, curve());
        XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, false);
        line.setSeriesPaint(0, Palette.LIMIT);
        line.setSeriesStroke(0, Palette.BOLD);
        plot.setRenderer(1, line);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartStyle.box("what was sampled", Palette.ENOUGH));
        legend.add(ChartStyle.line("what chance alone would give (normal distribution)", Palette.LIMIT, Palette.BOLD));
        String title = "Sampled values beside exact ones";
        String reading = reading(deviations);
        return new Chart(
                id,
                title,
                reading,
                "Histogram of " + deviations.size() + " deviations with a normal curve. " + reading,
                style.picture(title, plot, legend, HEIGHT));
    }

    private static List<Integer> counts(List<Double> deviations) {
        int[] counts = new int[(int) (2 * FAR / WIDTH)];
        for (double deviation : deviations) {
            int bin = (int) Math.floor((deviation + FAR) / WIDTH);
            counts[Math.max(0, Math.min(bin, counts.length - 1))]++;
        }
        List<Integer> list = new ArrayList<>();
        for (int count : counts) {
            list.add(count);
        }
        return list;
    }

    private static XYSeriesCollection curve() {
        XYSeries curve = new XYSeries("normal", false, true);
        for (int i = -80; i <= 80; i++) {
            double at = FAR * i / 80;
            curve.add(at, 100 * WIDTH * density(at));
        }
        return new XYSeriesCollection(curve);
    }

    private static double density(double at) {
        return Math.exp(-at * at / 2) / Math.sqrt(2 * Math.PI);
    }

    private static String reading(List<Double> deviations) {
        long one = deviations.stream()
                .filter(deviation -> Math.abs(deviation) <= 1)
                .count();
        double greatest = deviations.stream().mapToDouble(Math::abs).max().orElse(0);
        return one + " of " + deviations.size() + " sampled values lie within one standard error of the exact one; "
                + "of many, chance alone would give 68 %. The farthest is " + Numbers.text(greatest, 2)
                + " standard errors away.";
    }
}
