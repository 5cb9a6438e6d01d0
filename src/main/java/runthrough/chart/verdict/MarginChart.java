package runthrough.chart.verdict;

import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.DistributionPlot;
import runthrough.chart.Histogram;
import runthrough.chart.Palette;
import runthrough.quantity.Unit;
import runthrough.study.statistics.Sample;

/** The margin at each coil change: lowest level above the stop level, with the region of running out marked. */
final class MarginChart {
    private static final double[] PERCENTILES = {0.01, 0.05, 0.5};

    private MarginChart() {}

    /** The chart of the margins (m) of all replications. */
    static Chart of(ChartContext context, Sample margins) {
        ChartUnits units = context.units();
        Unit unit = units.length();
        Histogram histogram = Histogram.of(margins, unit.fromSi(1));
        DistributionPlot distribution = new DistributionPlot(context.style(), histogram);
        boolean varies = margins.percentile(1) > margins.percentile(0);
        if (varies) {
            for (double p : PERCENTILES) {
                double value = margins.percentile(p);
                String name = Math.round(100 * p) + " % have less than " + units.length(value);
                distribution.mark(unit.fromSi(value), name, Palette.PROCESS, Palette.DASHES);
            }
        }
        boolean near =
                margins.percentile(0) <= margins.percentile(1) - margins.percentile(0) || margins.percentile(0) <= 0;
        if (near) {
            distribution.mark(0, "stop level", Palette.LIMIT, Palette.BOLD);
        }
        XYPlot plot = distribution.plot(
                "lowest level above the stop level, " + unit.symbol(),
                i -> histogram.left(i + 1) <= 0 ? Palette.SHORT : Palette.ENOUGH);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartStyle.box("enough strip", Palette.ENOUGH));
        if (near) {
            DistributionPlot.shade(plot, plot.getDomainAxis().getLowerBound(), 0, Palette.RUN_OUT);
            legend.add(ChartStyle.box("below the stop level", Palette.RUN_OUT));
        }
        if (margins.percentile(0) < 0) {
            legend.add(ChartStyle.box("ran out: the process had to stop", Palette.SHORT));
        }
        String title = "Margin: what was left above the stop level at each coil change";
        String reading = reading(margins, varies, units);
        return new Chart(
                "margin",
                title,
                reading,
                "Histogram of " + margins.count() + " margins from " + units.length(margins.percentile(0)) + " to "
                        + units.length(margins.percentile(1)) + "; below zero the process had to stop. " + reading,
                context.style().picture(title, plot, legend, DistributionPlot.HEIGHT + 20));
    }

    private static String reading(Sample margins, boolean varies, ChartUnits units) {
        double out = margins.shareBelow(0);
        String least = units.length(margins.percentile(0));
        if (!varies) {
            return "Every coil change leaves a margin of " + least + ".";
        }
        return out == 0
                ? "No coil change runs out of strip; the least margin is " + least + "."
                : units.share(out) + " of the coil changes run out of strip; the least margin is " + least + ".";
    }
}
