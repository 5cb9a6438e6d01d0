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
import runthrough.study.Verdict;
import runthrough.study.statistics.Sample;

/**
 * The margin of each coil change: what would be left above the stop level, or where the process can slow above the level at which
 * it slows, if it kept its rated speed. What it really did is said beside it.
 */
final class MarginChart {
    private static final double[] PERCENTILES = {0.01, 0.05, 0.5};

    private MarginChart() {}

    /**
     * The chart of the margins of all replications.
     *
     * @param margins of the coil changes (m)
     * @param changes the same coil changes, by what came of them
     */
    static Chart of(ChartContext context, Sample margins, Verdict.Changes changes) {
        boolean slows = context.line().process().slowing().isPresent();
        String level = slows ? "slowing level" : "stop level";
        ChartUnits units = context.units();
        Unit unit = units.length();
        Histogram histogram = Histogram.ofMost(margins, unit.fromSi(1));
        DistributionPlot distribution = new DistributionPlot(context.style(), histogram);
        boolean varies = margins.percentile(1) > margins.percentile(0);
        if (varies) {
            for (double p : PERCENTILES) {
                double value = margins.percentile(p);
                String name = Math.round(100 * p) + " % have less than " + units.length(value);
                distribution.mark(unit.fromSi(value), name, Palette.PROCESS, Palette.DASHES);
            }
        }
        if (histogram.below() > 0) {
            String less = histogram.below() == 1 ? "1 has less: " : histogram.below() + " have less, down to ";
            double least = margins.percentile(0);
            distribution.mark(unit.fromSi(least), less + units.margin(least), Palette.PROCESS, Palette.DASHES);
        }
        boolean near =
                margins.percentile(0) <= margins.percentile(1) - margins.percentile(0) || margins.percentile(0) <= 0;
        if (near) {
            distribution.mark(0, level, Palette.LIMIT, Palette.BOLD);
        }
        XYPlot plot = distribution.plot(
                (slows ? "margin to slowing" : "margin to the stop level") + ", the process kept at its rated speed, "
                        + unit.symbol(),
                i -> histogram.left(i + 1) <= 0 ? Palette.SHORT : Palette.ENOUGH);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartStyle.box("enough strip", Palette.ENOUGH));
        if (near) {
            DistributionPlot.shade(plot, plot.getDomainAxis().getLowerBound(), 0, Palette.RUN_OUT);
            legend.add(ChartStyle.box("below the " + level, Palette.RUN_OUT));
        }
        if (margins.percentile(0) < 0) {
            legend.add(ChartStyle.box("too little strip at the rated speed", Palette.SHORT));
        }
        String title = (slows ? "Margin to slowing" : "Margin") + ": what each coil change would leave above the "
                + level + " at the rated speed";
        String reading = reading(margins, varies, units, changes);
        return new Chart(
                "margin",
                title,
                reading,
                "Histogram of " + margins.count() + " margins from " + units.margin(margins.percentile(0)) + " to "
                        + units.length(margins.percentile(1))
                        + "; below zero the process could not keep its rated speed. " + reading,
                context.style().picture(title, plot, legend, DistributionPlot.HEIGHT + 20));
    }

    private static String reading(Sample margins, boolean varies, ChartUnits units, Verdict.Changes changes) {
        String least = units.margin(margins.percentile(0));
        String margin = varies ? "The least margin is " + least : "Every coil change has a margin of " + least;
        if (changes.failed() == 0) {
            return margin + "; no coil change slowed or stopped the process.";
        }
        String stopped = share(changes.stopped(), changes, units) + " of the coil changes stopped the process";
        String slowed = share(changes.slowed(), changes, units)
                + (changes.stopped() > 0 ? " only slowed it" : " of the coil changes slowed the process");
        return margin + "; "
                + (changes.stopped() == 0
                        ? slowed + ", none stopped it."
                        : changes.slowed() == 0 ? stopped + "." : stopped + ", " + slowed + ".");
    }

    private static String share(long count, Verdict.Changes changes, ChartUnits units) {
        return units.share((double) count / changes.total());
    }
}
