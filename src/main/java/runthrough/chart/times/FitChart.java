package runthrough.chart.times;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Histogram;
import runthrough.chart.HistogramBars;
import runthrough.chart.Palette;
import runthrough.quantity.Notation;
import runthrough.quantity.Unit;
import runthrough.study.fitting.Candidate;
import runthrough.study.fitting.ElementFits;

/** A histogram of the times of an element, with the densities of distributions fitted to them. */
final class FitChart {
    private static final int HEIGHT = 360;
    private static final int POINTS = 400;
    private static final Color[] COLOURS = {Palette.PROCESS, Palette.LIMIT, Palette.ENTRY};
    private static final BasicStroke[] STROKES = {Palette.BOLD, Palette.LONG_DASHES, Palette.DASH_DOT};

    private final ChartStyle style;
    private final ElementFits element;
    private final List<Candidate> distributions;
    private final Unit clock;
    private final Histogram histogram;

    private FitChart(ChartStyle style, ElementFits element, List<Candidate> distributions) {
        this.style = style;
        this.element = element;
        this.distributions = distributions;
        this.clock = ChartUnits.clock(
                Histogram.of(element.times().sample(), 1, element.times().step())
                        .to());
        this.histogram = Histogram.of(
                element.times().sample(),
                clock.fromSi(1),
                clock.fromSi(element.times().step()));
    }

    /**
     * The chart of {@code element} with {@code distributions}, the chosen one first.
     *
     * @param number of the element, from 1
     */
    static Chart of(ChartStyle style, ElementFits element, List<Candidate> distributions, int number) {
        return new FitChart(style, element, distributions).chart(number);
    }

    private Chart chart(int number) {
        LegendItemCollection legend = new LegendItemCollection();
        NumberAxis domain = style.axis("time, " + clock.symbol());
        double room = 0.04 * (histogram.to() - histogram.left(0));
        ChartStyle.reach(domain, Math.max(0, histogram.left(0) - room), histogram.to() + room);
        NumberAxis range = style.axis("share of observations, %");
        XYPlot plot = style.plot(domain, range);
        HistogramBars.put(plot, histogram, i -> Palette.ENOUGH);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        legend.add(ChartStyle.box(element.times().n() + " times, in steps of " + width(), Palette.ENOUGH));
        double highest = 100 * histogram.greatestShare();
        for (int i = 0; i < distributions.size(); i++) {
            XYSeries curve = curve(distributions.get(i), domain);
            highest = Math.max(highest, Math.min(curve.getMaxY(), 1.6 * highest));
            plot.setDataset(i + 1, new XYSeriesCollection(curve));
            plot.setRenderer(i + 1, renderer(i));
            legend.add(ChartStyle.line(distributions.get(i).distribution().label(), COLOURS[i], STROKES[i]));
        }
        ChartStyle.reach(range, 0, 1.08 * highest);
        String title = element.times().element().label() + ": times and fitted distributions";
        String reading = reading();
        return new Chart(
                "fit-" + number,
                title,
                reading,
                "Histogram of " + element.times().n() + " times with " + distributions.size() + " curves over it. "
                        + reading,
                style.picture(title, plot, legend, HEIGHT));
    }

    private String width() {
        return time(clock.toSi(histogram.width()));
    }

    private static String time(double seconds) {
        return Notation.time(seconds).text(seconds);
    }

    /** Share that would fall into a bin about each time. */
    private XYSeries curve(Candidate distribution, NumberAxis domain) {
        XYSeries curve = new XYSeries(distribution.distribution().label(), false, true);
        double from = domain.getLowerBound();
        double step = (domain.getUpperBound() - from) / POINTS;
        double share = 100 * clock.toSi(histogram.width());
        IntStream.rangeClosed(0, POINTS)
                .mapToDouble(i -> from + i * step)
                .forEach(at -> curve.add(
                        at,
                        Math.min(
                                1000,
                                share
                                        * distribution
                                                .distribution()
                                                .distribution()
                                                .density(clock.toSi(at)))));
        return curve;
    }

    private static XYLineAndShapeRenderer renderer(int i) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, COLOURS[i]);
        renderer.setSeriesStroke(0, STROKES[i]);
        return renderer;
    }

    private String reading() {
        String chosen = distributions.get(0).distribution().label();
        String others = distributions.stream()
                .skip(1)
                .map(other -> other.distribution().label())
                .collect(Collectors.joining(" and "));
        String start = element.recommendation().distribution().isPresent()
                ? "The " + chosen + " distribution is recommended"
                : "No distribution is recommended; the " + chosen + " distribution comes nearest";
        String beyond = histogram.beyond() == 0
                ? ""
                : "; " + histogram.beyond() + " of the times lie beyond the right edge, up to "
                        + time(element.times().sample().percentile(1));
        return start + (others.isEmpty() ? "" : ", next are " + others) + beyond + ".";
    }
}
