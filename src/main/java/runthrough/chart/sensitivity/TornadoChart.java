package runthrough.chart.sensitivity;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Palette;
import runthrough.chart.sensitivity.BarRows.Half;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.study.sensitivity.Change;
import runthrough.study.sensitivity.ChangeMeasure;
import runthrough.study.sensitivity.SwingEffect;
import runthrough.study.sensitivity.SwingEffect.AtEnd;
import runthrough.study.sensitivity.Swings;
import runthrough.study.statistics.Interval;

/** What inputs do when they are moved one at a time: a row each, the one that does most at the top. */
final class TornadoChart {
    /** More rows cannot be taken in at a glance. */
    private static final int MOST_ROWS = 14;
    /** At most so many rows at the top have their bars cut so that the others can be seen, */
    private static final int MOST_CUT = 3;
    /** where they reach so many times as far as the next, */
    private static final double OUT_OF_SIZE = 4;
    /** to so many times that. */
    private static final double CUT = 1.5;

    private final ChartContext context;
    private final boolean chance;
    private final Unit unit;
    private final String unitName;
    private final DoubleFunction<String> text;
    private final Function<AtEnd, Optional<Change>> change;

    /** {@code text} writes an amount (SI) in a sentence. */
    private TornadoChart(
            ChartContext context,
            boolean chance,
            Unit unit,
            String unitName,
            DoubleFunction<String> text,
            Function<AtEnd, Optional<Change>> change) {
        this.context = context;
        this.chance = chance;
        this.unit = unit;
        this.unitName = unitName;
        this.text = text;
        this.change = change;
    }

    /** One for the margin or the lost time and one for the share run through; each only if something moves it. */
    static List<Chart> of(ChartContext context, Swings swings, boolean chance) {
        List<Chart> charts = new ArrayList<>();
        boolean margin = swings.measure() == ChangeMeasure.MARGIN;
        if (!swings.byStrip().isEmpty()) {
            Unit unit = margin ? context.units().length() : ChartUnits.clock(farthest(swings.byStrip()));
            String what = margin ? swings.atTarget() ? "margin at the target" : "mean margin" : "lost time";
            String title = "Sensitivity of the " + (margin ? what : "time lost at each coil change");
            DoubleFunction<String> text = margin ? context.units()::length : context.units()::time;
            charts.add(new TornadoChart(context, chance, unit, unit.symbol(), text, AtEnd::strip)
                    .chart("tornado-" + (margin ? "margin" : "lost"), title, what, swings.byStrip()));
        }
        if (!swings.byShare().isEmpty()) {
            DoubleFunction<String> text = share -> Numbers.text(Unit.PERCENT.fromSi(share), 3) + " percentage points";
            charts.add(new TornadoChart(context, chance, Unit.PERCENT, "percentage points", text, AtEnd::share)
                    .chart(
                            "tornado-share",
                            "Sensitivity of the share run through",
                            "share run through",
                            swings.byShare()));
        }
        return charts;
    }

    private Chart chart(String id, String title, String what, List<SwingEffect> all) {
        List<SwingEffect> shown = all.subList(0, Math.min(MOST_ROWS, all.size()));
        BarRows rows = new BarRows(
                context.style(),
                shown.stream().map(effect -> label(effect.swing().path())).toList());
        boolean doubtful = false;
        double limit = unit.fromSi(limit(shown, this::reach));
        for (int row = 0; row < shown.size(); row++) {
            doubtful |= add(rows, row, Half.UPPER, shown.get(row).low(), limit);
            doubtful |= add(rows, row, Half.LOWER, shown.get(row).high(), limit);
        }
        XYPlot plot = rows.plot("change of the " + what + ", " + unitName);
        String reading = reading(what, shown, all.size());
        return new Chart(
                id,
                title,
                reading,
                "Pairs of bars from a line in the middle, which is the line as it is. " + reading,
                context.style().picture(title, plot, legend(doubtful), rows.height()));
    }

    /** A path of which, where it is long, the section goes first and then the name of the distribution: the table has all of it. */
    private static String label(String path) {
        String inSection = path.length() <= BarRows.LONGEST_NAME ? path : path.replaceFirst("^[^.]+\\.", "");
        return inSection.length() <= BarRows.LONGEST_NAME
                ? inSection
                : inSection.replaceFirst("\\.[^.]+(\\.[^.]+)$", "$1");
    }

    private LegendItemCollection legend(boolean doubtful) {
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartStyle.box("input at its lower value", Palette.ENOUGH));
        legend.add(ChartStyle.box("at its higher value", Palette.JOIN));
        if (doubtful) {
            legend.add(ChartStyle.box("not shown to matter", Palette.OTHER));
        }
        if (chance) {
            legend.add(ChartStyle.line("95 % interval", Palette.LIMIT, Palette.SOLID));
        }
        return legend;
    }

    /** How far (s) bars of lost time are drawn. */
    private static double farthest(List<SwingEffect> effects) {
        return Math.min(effects.get(0).stripReach(), limit(effects, SwingEffect::stripReach));
    }

    /** How far bars are drawn (SI): to the end, unless a few would leave nothing to be seen of the others. */
    private static double limit(List<SwingEffect> shown, ToDoubleFunction<SwingEffect> reach) {
        for (int row = Math.min(MOST_CUT, shown.size() - 1); row > 0; row--) {
            double next = reach.applyAsDouble(shown.get(row));
            if (reach.applyAsDouble(shown.get(row - 1)) > OUT_OF_SIZE * next) {
                return CUT * next;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private double reach(SwingEffect effect) {
        return Math.max(reach(effect.low()), reach(effect.high()));
    }

    /** Adds the bar of one end; whether it is one that is not shown to matter. */
    private boolean add(BarRows rows, int row, Half half, AtEnd at, double limit) {
        if (change.apply(at).isEmpty()) {
            rows.words(row, half, 0, half == Half.UPPER, at.end().text() + ": not possible");
            return false;
        }
        Change by = change.apply(at).get();
        double mean = unit.fromSi(by.by().mean());
        Optional<Interval> interval = by.by().interval().filter(any -> chance);
        double low = unit.fromSi(interval.map(Interval::low).orElse(by.by().mean()));
        double high = unit.fromSi(interval.map(Interval::high).orElse(by.by().mean()));
        boolean left = mean < 0 || (mean == 0 && half == Half.UPPER);
        Color colour = !by.shown() ? Palette.OTHER : half == Half.UPPER ? Palette.ENOUGH : Palette.JOIN;
        if (Math.abs(mean) > limit) {
            String amount = at.end().text() + ": " + Numbers.text(mean, 3);
            rows.bar(row, half, left ? -limit : limit, colour);
            rows.words(row, half, left ? -limit : limit, left, left ? "◀ " + amount : amount + " ▶");
            return false;
        }
        rows.bar(row, half, mean, colour);
        interval.ifPresent(any -> rows.interval(row, half, low, high));
        rows.words(
                row,
                half,
                left ? Math.min(0, low) : Math.max(0, high),
                left,
                at.end().text());
        return !by.shown();
    }

    private String reading(String what, List<SwingEffect> shown, int all) {
        SwingEffect first = shown.get(0);
        AtEnd most = reach(first.low()) >= reach(first.high()) ? first.low() : first.high();
        double by = change.apply(most).orElseThrow().by().mean();
        return "Each input is changed alone. Most is done by " + first.swing().path() + ": at "
                + most.end().text() + " instead of " + first.swing().present() + " the " + what + " is "
                + text.apply(Math.abs(by)) + (by < 0 ? " less" : " more") + "."
                + (limit(shown, this::reach) < Double.POSITIVE_INFINITY
                        ? " Bars with an arrow are cut; the number is where they end."
                        : "")
                + notDrawn(all - shown.size());
    }

    private static String notDrawn(int inputs) {
        return inputs == 0
                ? ""
                : inputs == 1 ? " Not drawn is one that does less." : " Not drawn are " + inputs + " that do less.";
    }

    private double reach(AtEnd at) {
        return change.apply(at)
                .filter(Change::shown)
                .map(by -> Math.abs(by.by().mean()))
                .orElse(0.0);
    }
}
