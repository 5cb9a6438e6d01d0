package runthrough.chart.uncertainty;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.CurvePlot;
import runthrough.chart.DistributionPlot;
import runthrough.chart.Histogram;
import runthrough.chart.Palette;
import runthrough.quantity.Unit;
import runthrough.study.statistics.Sample;
import runthrough.study.uncertainty.UncertainFigure;
import runthrough.study.uncertainty.Uncertainty;

/** How well share and capacity are known, as two nested bands: from simulation noise alone, and with what is not known of times. */
public final class UncertaintyCharts {
    private static final int HEIGHT = 460;
    /** The wider band; the narrower is darker. */
    private static final Color OUTER = new Color(0xDCE9F3);

    private static final Color INNER = new Color(0x8FBDDD);

    private final ChartContext context;
    private final Uncertainty known;

    private UncertaintyCharts(ChartContext context, Uncertainty known) {
        this.context = context;
        this.known = known;
    }

    /** How well share and capacity are known. */
    public static List<Chart> of(Uncertainty known) {
        return of(ChartContext.of(known.request()), known);
    }

    static List<Chart> of(ChartContext context, Uncertainty known) {
        UncertaintyCharts charts = new UncertaintyCharts(context, known);
        List<Chart> all = new ArrayList<>();
        if (!known.curve().isEmpty()) {
            all.add(charts.curve());
        }
        all.add(charts.shares());
        return all;
    }

    private Chart curve() {
        Unit length = context.units().length();
        LegendItemCollection legend = new LegendItemCollection();
        NumberAxis domain = context.style().axis("capacity of the accumulator, " + length.symbol());
        List<Uncertainty.Point> points = known.curve();
        ChartStyle.reach(
                domain,
                length.fromSi(points.get(0).capacity()),
                length.fromSi(points.get(points.size() - 1).capacity()));
        CurvePlot plot = new CurvePlot(context.style(), legend, domain, "coil changes run through, %");
        plot.bands(
                "share run through",
                points.stream()
                        .map(point -> point(point, point.share().all(), length))
                        .toList(),
                "95 % interval, the times not being known exactly",
                OUTER,
                points.stream()
                        .map(point -> point(point, point.share().simulation(), length))
                        .toList(),
                "95 % interval from simulation noise alone",
                INNER);
        plot.across("target: " + ChartUnits.target(known.target()), 100 * known.target());
        plot.upright(
                "capacity as it is",
                length.fromSi(context.line().accumulator().capacity()),
                Palette.SECONDARY,
                Palette.DASH_DOT);
        String title = "Share run through against capacity, and how well it is known";
        UncertainFigure capacity = known.capacity().orElseThrow();
        String reading = "The target of " + ChartUnits.target(known.target()) + " takes "
                + context.units().length(capacity.value()) + " of capacity; from simulation noise alone "
                + range(capacity.simulation(), length) + ", with what is not known of the times "
                + range(capacity.all(), length) + ".";
        return new Chart(
                "known-capacity",
                title,
                reading,
                "A curve with two nested bands, the target across it and the present capacity upright. " + reading,
                context.style().picture(title, plot.within(0, 100), legend, HEIGHT));
    }

    private static CurvePlot.Point point(Uncertainty.Point point, UncertainFigure.Band band, Unit length) {
        return new CurvePlot.Point(
                length.fromSi(point.capacity()), 100 * point.share().value(), 100 * band.low(), 100 * band.high());
    }

    private static String range(UncertainFigure.Band band, Unit unit) {
        return ChartUnits.text(band.low(), unit) + " to " + ChartUnits.text(band.high(), unit);
    }

    private Chart shares() {
        Sample sample = Sample.of(
                known.shares().stream().mapToDouble(Double::doubleValue).toArray());
        Histogram histogram = Histogram.of(sample, 100);
        DistributionPlot distribution = new DistributionPlot(context.style(), histogram);
        UncertainFigure.Band all = known.share().all();
        distribution.mark(100 * known.target(), "target", Palette.LIMIT, Palette.LONG_DASHES);
        distribution.mark(100 * known.share().value(), "with the times as observed", Palette.PROCESS, Palette.BOLD);
        distribution.mark(100 * all.low(), "95 % interval from here", Palette.SECONDARY, Palette.DASHES);
        distribution.mark(100 * all.high(), "to here", Palette.SECONDARY, Palette.DASHES);
        XYPlot plot = distribution.plot("coil changes run through, %", "share of resamples, %", i -> Palette.ENOUGH);
        String title = "Share run through, had other coil changes been timed";
        String reading = "With other observations of the same number the share might well have come out between "
                + context.units().share(all.low()) + " and "
                + context.units().share(all.high()) + "; simulation noise alone leaves "
                + context.units().share(known.share().simulation().low()) + " to "
                + context.units().share(known.share().simulation().high()) + ".";
        return new Chart(
                "known-share",
                title,
                reading,
                "Histogram of the share in " + known.resamples() + " resamples. " + reading,
                context.style().picture(title, plot, new LegendItemCollection(), DistributionPlot.HEIGHT));
    }
}
