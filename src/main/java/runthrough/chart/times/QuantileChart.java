package runthrough.chart.times;

import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.CurvePlot;
import runthrough.chart.OutcomeStyle;
import runthrough.chart.Palette;
import runthrough.quantity.Unit;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.ElementFits;
import runthrough.study.statistics.Sample;

/** The times of an element in order of size, against where a distribution expects them: on the line where the distribution fits. */
final class QuantileChart {
    private static final int HEIGHT = 360;
    /** Of very many times, so many are drawn besides the tails. */
    private static final int MOST = 400;

    private QuantileChart() {}

    /**
     * The chart of {@code element} against {@code candidate}; the i-th of n times stands at the distribution's quantile of (i - 0.5) / n.
     *
     * @param number of the element, from 1
     */
    static Chart of(ChartStyle style, ElementFits element, Candidate candidate, int number) {
        Sample sample = element.times().sample();
        double least = Double.POSITIVE_INFINITY;
        double greatest = 0;
        for (int i : places(sample.count())) {
            double expected = expected(candidate, sample, i);
            least = Math.min(least, Math.min(expected, sample.get(i)));
            greatest = Math.max(greatest, Math.max(expected, sample.get(i)));
        }
        double room = 0.04 * (greatest - least);
        Unit clock = ChartUnits.clock(greatest + room);
        XYSeries inside = new XYSeries("times", false, true);
        XYSeries outside = new XYSeries("outliers", false, true);
        for (int i : places(sample.count())) {
            double expected = expected(candidate, sample, i);
            double seen = sample.get(i);
            boolean isOutlier = seen < element.times().outliers().low()
                    || seen > element.times().outliers().high();
            (isOutlier ? outside : inside).add(clock.fromSi(expected), clock.fromSi(seen));
        }
        double from = clock.fromSi(Math.max(0, least - room));
        double to = clock.fromSi(greatest + room);
        LegendItemCollection legend = new LegendItemCollection();
        XYPlot plot = plot(style, candidate, clock, from, to);
        marks(plot, legend, inside, outside);
        legend.add(ChartStyle.line("as the distribution has it", Palette.FAINT, Palette.DASHES));
        String title = element.times().element().label() + ": observed against "
                + candidate.distribution().label();
        String reading = "Where marks leave the line upwards, times are longer than the "
                + candidate.distribution().label()
                + " distribution has them; the farthest that its distribution function is from the observed one is "
                + ChartUnits.text(candidate.distance().kolmogorovSmirnov(), Unit.PERCENT) + " of the coil changes.";
        return new Chart(
                "quantiles-" + number,
                title,
                reading,
                "One mark for each of " + sample.count()
                        + " times: expected time across, observed time upwards, with the"
                        + " line on which both are equal. " + reading,
                style.picture(title, plot, legend, HEIGHT));
    }

    /** Where the candidate's distribution has the i-th time. */
    private static double expected(Candidate candidate, Sample sample, int i) {
        return candidate.distribution().distribution().quantile((i + 0.5) / sample.count());
    }

    private static XYPlot plot(ChartStyle style, Candidate candidate, Unit clock, double from, double to) {
        NumberAxis domain =
                style.axis("time by the " + candidate.distribution().label() + " distribution, " + clock.symbol());
        NumberAxis range = style.axis("observed time, " + clock.symbol());
        ChartStyle.reach(domain, from, to);
        ChartStyle.reach(range, from, to);
        XYPlot plot = style.plot(domain, range);
        XYSeries equal = new XYSeries("equal", false, true);
        equal.add(from, from);
        equal.add(to, to);
        XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, false);
        line.setSeriesPaint(0, Palette.FAINT);
        line.setSeriesStroke(0, Palette.DASHES);
        plot.setDataset(1, new XYSeriesCollection(equal));
        plot.setRenderer(1, line);
        return plot;
    }

    private static void marks(XYPlot plot, LegendItemCollection legend, XYSeries inside, XYSeries outside) {
        XYSeriesCollection data = new XYSeriesCollection();
        data.addSeries(inside);
        data.addSeries(outside);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesPaint(0, Palette.LEVEL);
        renderer.setSeriesShape(0, OutcomeStyle.RAN_THROUGH.shape());
        renderer.setSeriesPaint(1, Palette.LIMIT);
        renderer.setSeriesShape(1, CurvePlot.DIAMOND);
        plot.setDataset(0, data);
        plot.setRenderer(0, renderer);
        legend.add(ChartStyle.mark("observed", Palette.LEVEL, OutcomeStyle.RAN_THROUGH.shape()));
        if (!outside.isEmpty()) {
            legend.add(ChartStyle.mark("observed, outlying", Palette.LIMIT, CurvePlot.DIAMOND));
        }
    }

    /** All places in order of size, or of very many the tails and some between. */
    private static List<Integer> places(int n) {
        List<Integer> places = new ArrayList<>();
        int every = Math.max(1, n / MOST);
        for (int i = 0; i < n; i++) {
            if (i % every == 0 || i < MOST / 10 || n - i <= MOST / 10) {
                places.add(i);
            }
        }
        return places;
    }
}
