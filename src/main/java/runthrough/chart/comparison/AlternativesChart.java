package runthrough.chart.comparison;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jfree.chart.LegendItemCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.CurvePlot;
import runthrough.chart.Palette;
import runthrough.chart.RowChart;
import runthrough.chart.RowPlot;
import runthrough.quantity.Unit;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** What each alternative gives: the time it loses and the share of coil changes that it runs through. */
final class AlternativesChart {
    private final ChartStyle style;
    private final ChartUnits units;
    private final Comparison comparison;
    private final List<Compared> all;

    private AlternativesChart(ChartContext context, Comparison comparison) {
        this.style = context.style();
        this.units = context.units();
        this.comparison = comparison;
        this.all = comparison.all();
    }

    static Chart of(ChartContext context, Comparison comparison) {
        return new AlternativesChart(context, comparison).chart();
    }

    private Chart chart() {
        String title = "What each alternative loses, and what it runs through";
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartStyle.box("lost time (starved)", Palette.SLOWED));
        legend.add(ChartStyle.mark("run through", Palette.LEVEL, CurvePlot.CIRCLE));
        legend.add(ChartStyle.line(
                "target: " + ChartUnits.target(comparison.target()), Palette.LIMIT, Palette.LONG_DASHES));
        if (comparison.chance()) {
            legend.add(ChartStyle.line("95 % interval of each", Palette.PROCESS, Palette.SOLID));
        }
        String reading = reading();
        return new Chart(
                "alternatives",
                title,
                reading,
                "One row for each alternative, that called today first: at the left a bar of the time lost per 8 h, at"
                        + " the right the share of coil changes run through with the target as a line. " + reading,
                RowChart.picture(style, title, names(comparison), List.of(lost(), share()), legend));
    }

    /** A row for each alternative, today's marked. */
    static List<String> names(Comparison comparison) {
        return IntStream.range(0, comparison.all().size())
                .mapToObj(i -> comparison.all().get(i).alternative().name() + (i == 0 ? " (today)" : ""))
                .toList();
    }

    private RowPlot lost() {
        double greatest = all.stream()
                .mapToDouble(one -> end(estimate(one, ComparisonMeasure.LOST_TIME), one))
                .max()
                .orElse(0);
        Unit unit = ChartUnits.clock(greatest);
        RowPlot panel = new RowPlot(style, "lost per 8 h, " + unit.symbol());
        for (int row = 0; row < all.size(); row++) {
            Compared one = all.get(row);
            Estimate lost = estimate(one, ComparisonMeasure.LOST_TIME);
            panel.bar(row, unit.fromSi(lost.mean()), Palette.SLOWED);
            int place = row;
            interval(one, lost)
                    .ifPresent(ends -> panel.interval(place, unit.fromSi(ends.low()), unit.fromSi(ends.high())));
        }
        panel.within(0, Double.MAX_VALUE);
        for (int row = 0; row < all.size(); row++) {
            double mean = estimate(all.get(row), ComparisonMeasure.LOST_TIME).mean();
            panel.words(row, unit.fromSi(mean), units.time(mean));
        }
        return panel;
    }

    private RowPlot share() {
        RowPlot panel = new RowPlot(style, "coil changes run through, %");
        panel.upright(Unit.PERCENT.fromSi(comparison.target()), Palette.LIMIT, Palette.LONG_DASHES);
        for (int row = 0; row < all.size(); row++) {
            Compared one = all.get(row);
            Estimate share = estimate(one, ComparisonMeasure.RUN_THROUGH);
            int place = row;
            interval(one, share)
                    .ifPresent(ends ->
                            panel.interval(place, Unit.PERCENT.fromSi(ends.low()), Unit.PERCENT.fromSi(ends.high())));
            panel.mark(row, Unit.PERCENT.fromSi(share.mean()), CurvePlot.CIRCLE, Palette.LEVEL, true);
        }
        panel.within(-4, 104);
        for (int row = 0; row < all.size(); row++) {
            double mean = estimate(all.get(row), ComparisonMeasure.RUN_THROUGH).mean();
            panel.words(row, Unit.PERCENT.fromSi(mean), units.share(mean));
        }
        return panel;
    }

    private static Estimate estimate(Compared one, ComparisonMeasure measure) {
        return one.figure(measure).value();
    }

    private static double end(Estimate estimate, Compared one) {
        return interval(one, estimate).map(Interval::high).orElse(estimate.mean());
    }

    private static Optional<Interval> interval(Compared one, Estimate estimate) {
        return estimate.interval().filter(any -> one.chance());
    }

    private String reading() {
        String lost = all.stream()
                .map(one -> one.alternative().name() + " loses "
                        + units.time(estimate(one, ComparisonMeasure.LOST_TIME).mean()) + " in 8 h and runs through "
                        + units.share(
                                estimate(one, ComparisonMeasure.RUN_THROUGH).mean()))
                .reduce((one, other) -> one + "; " + other)
                .orElseThrow();
        return Character.toUpperCase(lost.charAt(0)) + lost.substring(1) + ".";
    }
}
