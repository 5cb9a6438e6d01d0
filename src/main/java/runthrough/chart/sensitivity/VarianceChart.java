package runthrough.chart.sensitivity;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.Palette;
import runthrough.chart.sensitivity.BarRows.Half;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.SobolIndices.Index;
import runthrough.study.sensitivity.VarianceShares;
import runthrough.study.sensitivity.VarianceShares.Share;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** Which sources of chance carry the variance of a measure: a row each, with what it carries by itself and in all. */
final class VarianceChart {
    private static final int MOST_ROWS = 14;
    /** Percent that come from rounding alone. */
    private static final double NEGLIGIBLE = 1e-6;

    private VarianceChart() {}

    /** One for each measure that varies and is not the joint cycle time. */
    static List<Chart> of(ChartContext context, List<VarianceShares> randomness) {
        List<Chart> charts = new ArrayList<>();
        for (VarianceShares shares : randomness) {
            if (shares.varies() && shares.measure() != ChangeMeasure.JOINT_CYCLE_TIME) {
                charts.add(chart(context, shares));
            }
        }
        return charts;
    }

    private static Chart chart(ChartContext context, VarianceShares shares) {
        String what = name(shares.measure());
        List<Share> shown =
                shares.sources().subList(0, Math.min(MOST_ROWS, shares.sources().size()));
        BarRows rows = new BarRows(
                context.style(),
                shown.stream().map(share -> share.source().label()).toList());
        for (int row = 0; row < shown.size(); row++) {
            add(rows, row, shown.get(row).index());
        }
        XYPlot plot = rows.plot("share of the variance of " + what + ", %");
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartStyle.box("first-order: by itself", Palette.JOIN));
        legend.add(ChartStyle.box("total: also together with others", Palette.ENOUGH));
        legend.add(ChartStyle.line("95 % interval", Palette.LIMIT, Palette.SOLID));
        String title = "Random sources in the variance of " + what;
        String reading = reading(what, shares);
        return new Chart(
                "variance-" + shares.measure().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                title,
                reading,
                "Two bars for each random source, in percent of the variance. " + reading,
                context.style().picture(title, plot, legend, rows.height()));
    }

    private static void add(BarRows rows, int row, Index index) {
        double reach = Math.max(end(index.first()), end(index.total()));
        if (reach > NEGLIGIBLE) {
            add(rows, row, Half.UPPER, index.first(), Palette.JOIN);
            add(rows, row, Half.LOWER, index.total(), Palette.ENOUGH);
        }
        if (!index.isShown()) {
            rows.words(row, Half.MIDDLE, reach > NEGLIGIBLE ? reach : 0, false, "not significant");
        }
    }

    private static String name(ChangeMeasure measure) {
        return switch (measure) {
            case MARGIN -> "the margin";
            case RUN_THROUGH -> "running through";
            case JOINT_CYCLE_TIME -> "the joint cycle time";
            case LOST_TIME -> "the time lost at a coil change";
        };
    }

    private static String reading(String what, VarianceShares shares) {
        return shares.main()
                .map(main -> "Of the variance of " + what + ", "
                        + percent(main.index().first()) + " comes from "
                        + main.source().label() + " by itself and "
                        + percent(main.index().total())
                        + " from it together with others.")
                .orElse("No random source has a significant share in the variance of " + what
                        + ". More samples would show more.");
    }

    private static String percent(Estimate index) {
        return Numbers.text(inPercent(index.mean()), 3) + " %";
    }

    /** A bar of an index, which is from 0 to 1 but for the error of estimation. */
    private static void add(BarRows rows, int row, Half half, Estimate index, Color colour) {
        rows.bar(row, half, inPercent(index.mean()), colour);
        index.interval().ifPresent(ends -> rows.interval(row, half, inPercent(ends.low()), inPercent(ends.high())));
    }

    private static double end(Estimate index) {
        return inPercent(index.interval().map(Interval::high).orElse(index.mean()));
    }

    private static double inPercent(double index) {
        return Unit.PERCENT.fromSi(Math.max(0, Math.min(1, index)));
    }
}
