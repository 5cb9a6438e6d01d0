package runthrough.chart.comparison;

import java.awt.Color;
import java.awt.Shape;
import java.util.List;
import org.jfree.chart.LegendItemCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.CurvePlot;
import runthrough.chart.Palette;
import runthrough.chart.RowChart;
import runthrough.chart.RowPlot;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.study.comparison.Compared;
import runthrough.study.comparison.Comparison;
import runthrough.study.comparison.ComparisonMeasure;
import runthrough.study.statistics.Difference;

/** What each alternative gains over the one called today in a year, with the interval that may or may not cross zero. */
final class GainChart {
    private final ChartStyle style;
    private final ChartUnits units;
    private final Comparison comparison;
    private final List<Compared> others;

    private GainChart(ChartContext context, Comparison comparison) {
        this.style = context.style();
        this.units = context.units();
        this.comparison = comparison;
        this.others = comparison.others();
    }

    static Chart of(ChartContext context, Comparison comparison) {
        return new GainChart(context, comparison).chart();
    }

    /** How a difference is drawn. */
    private enum Look {
        BETTER("better, significant"),
        WORSE("worse, significant"),
        NOT_SHOWN("not shown"),
        NONE("none");

        private final String words;

        Look(String words) {
            this.words = words;
        }

        static Look of(ComparisonMeasure measure, Difference difference) {
            return switch (difference.significance()) {
                case SIGNIFICANT -> measure.isGain(difference.mean()) ? BETTER : WORSE;
                case NOT_SHOWN -> NOT_SHOWN;
                case NONE -> NONE;
            };
        }

        Shape shape() {
            return this == WORSE || this == NONE ? CurvePlot.DIAMOND : CurvePlot.CIRCLE;
        }

        Color colour() {
            return switch (this) {
                case BETTER -> Palette.LEVEL;
                case WORSE -> Palette.SHORT;
                case NOT_SHOWN, NONE -> Palette.FAINT;
            };
        }

        /** What is not statistically significant is hollow. */
        boolean isFilled() {
            return this == BETTER || this == WORSE;
        }
    }

    private Chart chart() {
        String today = comparison.today().alternative().name();
        String title = "What each gains over \"" + today + "\" in a year of " + units.time(comparison.yearlyTime());
        LegendItemCollection legend = new LegendItemCollection();
        for (Look look : Look.values()) {
            legend.add(
                    look.isFilled()
                            ? ChartStyle.mark(look.words, look.colour(), look.shape())
                            : ChartStyle.hollow(look.words, look.colour(), look.shape()));
        }
        if (comparison.chance()) {
            legend.add(ChartStyle.line(
                    "interval; all of a column hold together with 95 %", Palette.PROCESS, Palette.SOLID));
        }
        String reading = reading();
        return new Chart(
                "gain",
                title,
                reading,
                "One row for each alternative but today's: at the left the output of a year, less today's; at the"
                        + " right the lost time (starved) in a year, less today's; a line at zero in"
                        + " each. " + reading,
                RowChart.picture(
                        style,
                        title,
                        others.stream().map(one -> one.alternative().name()).toList(),
                        List.of(
                                panel(ComparisonMeasure.OUTPUT_MASS, "output of a year, difference, ", massUnit()),
                                panel(ComparisonMeasure.LOST_TIME, "time lost in a year, difference, ", Unit.HOUR)),
                        legend));
    }

    private Unit massUnit() {
        double greatest = others.stream()
                .mapToDouble(one ->
                        Math.abs(difference(one, ComparisonMeasure.OUTPUT_MASS).mean()))
                .max()
                .orElse(0);
        return units.units().unitFor(Kind.MASS, greatest);
    }

    private static Difference difference(Compared one, ComparisonMeasure measure) {
        return one.perYear(measure).difference().orElseThrow();
    }

    private RowPlot panel(ComparisonMeasure measure, String label, Unit unit) {
        RowPlot panel = new RowPlot(style, label + unit.symbol());
        panel.upright(0, Palette.TEXT, Palette.SOLID);
        for (int row = 0; row < others.size(); row++) {
            Difference difference = difference(others.get(row), measure);
            int place = row;
            difference
                    .interval()
                    .ifPresent(ends -> panel.interval(place, unit.fromSi(ends.low()), unit.fromSi(ends.high())));
            Look look = Look.of(measure, difference);
            panel.mark(row, unit.fromSi(difference.mean()), look.shape(), look.colour(), look.isFilled());
        }
        panel.within(-Double.MAX_VALUE, Double.MAX_VALUE);
        for (int row = 0; row < others.size(); row++) {
            Difference difference = difference(others.get(row), measure);
            panel.words(row, unit.fromSi(difference.mean()), words(difference, unit));
        }
        return panel;
    }

    private static String words(Difference difference, Unit unit) {
        String sign = difference.mean() > 0 ? "+" : "";
        return switch (difference.significance()) {
            case SIGNIFICANT -> sign + ChartUnits.text(difference.mean(), unit);
            case NOT_SHOWN -> "not shown";
            case NONE -> "none";
        };
    }

    private String reading() {
        Unit unit = massUnit();
        String all = others.stream()
                .map(one ->
                        one.alternative().name() + " " + words(difference(one, ComparisonMeasure.OUTPUT_MASS), unit))
                .reduce((one, other) -> one + "; " + other)
                .orElseThrow();
        return "Difference in the output of a year: " + all + ".";
    }
}
