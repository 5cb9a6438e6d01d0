package runthrough.chart.document;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import runthrough.chart.Chart;
import runthrough.chart.ChartStyle;
import runthrough.chart.CurvePlot;
import runthrough.chart.Palette;
import runthrough.quantity.Amounts;
import runthrough.quantity.Numbers;
import runthrough.study.benefit.CashFlow;
import runthrough.study.benefit.Gain;
import runthrough.study.benefit.Worth;

/** What an alternative is worth: money over the years, and how far its least certain input may be off. */
public final class WorthCharts {
    private static final int HEIGHT = 400;
    private static final int POINTS = 20;
    private static final int MOST_TICKS = 20;
    /** A break-even that is more times as far away than this is stated, not drawn. */
    private static final double FAR = 50;
    /** How much of the axis lies beyond the break-even. */
    private static final double BEYOND = 1.15;

    private WorthCharts() {}

    /**
     * Both charts of an alternative.
     *
     * @param name of the alternative
     * @param uncertain the least certain input in words
     */
    public static List<Chart> of(String name, Worth worth, String uncertain) {
        return List.of(cashFlow(name, worth), breakEven(name, worth, uncertain));
    }

    private static Chart cashFlow(String name, Worth worth) {
        ChartStyle style = new ChartStyle();
        LegendItemCollection legend = new LegendItemCollection();
        NumberAxis domain = style.axis("years from the purchase");
        domain.setRange(0, worth.offer().life());
        domain.setTickUnit(new NumberTickUnit(Math.ceil(worth.offer().life() / (double) MOST_TICKS)));
        CurvePlot plot = new CurvePlot(style, legend, domain, amounts(style, "what has come in, " + currency(worth)));
        Gain yearly = worth.yearly();
        double rate = worth.money().rate();
        List<CurvePlot.Point> points = new ArrayList<>();
        for (int year = 0; year <= worth.offer().life(); year++) {
            points.add(new CurvePlot.Point(
                    year,
                    total(worth, yearly.mean(), year),
                    total(worth, yearly.low(), year),
                    total(worth, yearly.high(), year)));
        }
        plot.curve("worth now, discounted", points, yearly.low() < yearly.high() ? "its interval" : "");
        List<Double> plain = worth.flow().runningTotal(0);
        plot.known("not discounted", 0, plain.get(0), worth.offer().life(), plain.get(plain.size() - 1));
        plot.across("price earned back", 0);
        double end = points.get(points.size() - 1).y();
        String reading = "After " + worth.offer().life() + " years "
                + Amounts.text(Math.abs(end), worth.presentValue().halfWidth()) + " "
                + currency(worth) + (end < 0 ? " are missing" : " are left") + ", at " + Numbers.text(100 * rate)
                + " % a year; the price is paid at time zero, gains come at the end of each year.";
        String title = "Money over the years: " + name;
        return new Chart(
                "cash-flow",
                title,
                reading,
                "A line that begins at minus the price and rises by what comes in each year, and zero as a line"
                        + " across. "
                        + reading,
                style.picture(title, plot.within(-Double.MAX_VALUE, Double.MAX_VALUE), legend, HEIGHT));
    }

    private static NumberAxis amounts(ChartStyle style, String label) {
        NumberAxis axis = style.axis(label);
        axis.setNumberFormatOverride(Amounts.grouped());
        return axis;
    }

    private static double total(Worth worth, double yearly, int years) {
        return -worth.offer().price()
                + yearly * CashFlow.uniformPresentValue(worth.money().rate(), years);
    }

    private static Chart breakEven(String name, Worth worth, String uncertain) {
        ChartStyle style = new ChartStyle();
        LegendItemCollection legend = new LegendItemCollection();
        double value = worth.leastCertainValue().orElse(0);
        OptionalDouble even = worth.breakEven();
        double most = Math.max(2, even.isPresent() && even.getAsDouble() < FAR ? BEYOND * even.getAsDouble() : 2);
        NumberAxis domain = style.axis(uncertain + ", " + currency(worth));
        domain.setNumberFormatOverride(Amounts.grouped());
        ChartStyle.reach(domain, 0, Math.max(most * value, 1e-9));
        CurvePlot plot = new CurvePlot(style, legend, domain, amounts(style, "net present value, " + currency(worth)));
        List<CurvePlot.Point> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double factor = most * i / POINTS;
            Gain at = worth.presentValueWith(factor);
            points.add(new CurvePlot.Point(
                    factor * value, at.mean(), Math.min(at.low(), at.high()), Math.max(at.low(), at.high())));
        }
        Gain given = worth.presentValueWith(1);
        plot.curve("net present value", points, given.low() < given.high() ? "its interval" : "");
        plot.across("break-even", 0);
        plot.mark("as given", value, given.mean(), CurvePlot.CIRCLE, Palette.PROCESS);
        String reading;
        if (even.isPresent()) {
            double at = even.getAsDouble() * value;
            if (even.getAsDouble() <= most) {
                plot.mark("break-even", at, 0, CurvePlot.DIAMOND, Palette.EDGE);
            }
            reading = "\"" + name + "\" breaks even with " + Amounts.text(at) + " " + currency(worth) + " for "
                    + uncertain + "; " + Amounts.exact(value) + " was given.";
        } else {
            reading = "\"" + name + "\"" + (given.mean() > 0 ? " is worth its price" : " does not break even")
                    + " whatever the " + uncertain + ".";
        }
        String title = "Break-even: how far " + uncertain + " may be off";
        return new Chart(
                "break-even",
                title,
                reading,
                "A straight line of the net present value over " + uncertain + ", and zero as a line across. "
                        + reading,
                style.picture(title, plot.within(-Double.MAX_VALUE, Double.MAX_VALUE), legend, HEIGHT));
    }

    private static String currency(Worth worth) {
        return worth.money().currency();
    }
}
