package runthrough.chart.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.CurvePlot;
import runthrough.chart.Palette;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Sizing;
import runthrough.study.statistics.Interval;

/**
 * Coil changes that do not run through against the capacity of the accumulator, on a scale of powers of ten, above the time
 * that is lost in a year.
 */
public final class CapacityChart {
    private static final int HEIGHT = 560;
    /** Half the height of the end of an interval, as a part of where it lies. */
    private static final double END = 0.15;
    /** The axis of failures goes so many times further at either end, so that a mark there is whole. */
    private static final double BESIDE = 1.25;

    private final ChartContext context;
    private final Sizing sizing;
    private final Unit unit;
    /** What the target allows to fail, in percent. */
    private final double allowed;

    private CapacityChart(ChartContext context, Sizing sizing) {
        this.context = context;
        this.sizing = sizing;
        this.unit = context.units().length();
        this.allowed = failing(sizing.target());
    }

    /** Failures and lost time against capacity; none where no capacity was found. */
    public static List<Chart> of(Sizing sizing) {
        return sizing.answer() == Sizing.Answer.FOUND
                ? List.of(of(ChartContext.of(sizing.request(), sizing.replications()), sizing))
                : List.of();
    }

    /** The chart of a sizing that found a capacity. */
    static Chart of(ChartContext context, Sizing sizing) {
        return new CapacityChart(context, sizing).chart(sizing.capacity().orElseThrow());
    }

    private Chart chart(Crossing found) {
        double value = found.answer().orElseThrow();
        LegendItemCollection legend = new LegendItemCollection();
        NumberAxis domain = context.style().axis("usable capacity of the accumulator, " + unit.symbol());
        List<Sizing.Point> curve = sizing.curve();
        ChartStyle.reach(domain, capacity(curve.get(0)), capacity(curve.get(curve.size() - 1)));
        CombinedDomainXYPlot both = context.style().combined(domain);
        both.add(failures(found, legend), 3);
        both.add(lostTime(legend), 2);
        String reading = reading(value, ends(found));
        String title = "How much the accumulator must hold";
        return new Chart(
                "capacity",
                title,
                reading,
                "A curve of failures that falls as the capacity rises, its band of uncertainty, and what the target allows as a line"
                        + " across; below it the lost time of a year. "
                        + reading,
                context.style().picture(title, both, legend, HEIGHT));
    }

    private XYPlot failures(Crossing found, LegendItemCollection legend) {
        List<CurvePlot.Point> points = failing();
        double least = points.stream()
                .mapToDouble(CurvePlot.Point::y)
                .filter(y -> y > 0)
                .min()
                .orElse(allowed);
        double most = points.stream().mapToDouble(CurvePlot.Point::y).max().orElse(100);
        LogAxis share = context.style().powers("not run through, %", Math.min(least, allowed), Math.max(most, allowed));
        share.setRange(share.getLowerBound() / BESIDE, share.getUpperBound() * BESIDE);
        double floor = share.getLowerBound();
        CurvePlot plot = new CurvePlot(context.style(), legend, null, share);
        plot.curve(
                "coil changes that do not run through",
                points.stream().map(point -> point.atLeast(floor)).toList(),
                sizing.chance() ? "its 95 % interval" : "");
        plot.across("target: at most " + ChartUnits.target(1 - sizing.target()), allowed);
        Optional<String> ends = ends(found);
        if (ends.isPresent()) {
            plot.interval(
                    unit.fromSi(found.low().orElseThrow()),
                    unit.fromSi(found.high().orElseThrow()),
                    allowed,
                    END * allowed);
        }
        double value = found.answer().orElseThrow();
        String smallest = "smallest that meets the target: " + length(value) + ends.orElse("");
        plot.mark(smallest, unit.fromSi(value), allowed, CurvePlot.DIAMOND, Palette.EDGE);
        present(plot, floor);
        return plot.asItIs();
    }

    private XYPlot lostTime(LegendItemCollection legend) {
        CurvePlot plot = new CurvePlot(context.style(), legend, null, "lost in a year, h");
        List<Sizing.Point> known = sizing.curve().stream()
                .filter(point -> point.lostTime().isPresent())
                .toList();
        plot.further(
                "lost time (starved) in a year",
                known.stream().mapToDouble(this::capacity).toArray(),
                known.stream()
                        .mapToDouble(point ->
                                Unit.HOUR.fromSi(point.lostTime().orElseThrow().mean()))
                        .toArray(),
                Palette.PROCESS,
                Palette.DASHES);
        return plot.within(0, Double.MAX_VALUE);
    }

    private double capacity(Sizing.Point point) {
        return unit.fromSi(point.size().capacity());
    }

    private static double failing(double share) {
        return Unit.PERCENT.fromSi(1 - share);
    }

    private void present(CurvePlot plot, double floor) {
        Sizing.Point now = sizing.present().orElseThrow();
        double x = capacity(now);
        List<Sizing.Point> curve = sizing.curve();
        boolean isShown = capacity(curve.get(0)) <= x && x <= capacity(curve.get(curve.size() - 1));
        if (now.share().isPresent() && isShown) {
            double seen = now.share().get().mean();
            plot.mark(
                    "as it is: " + length(now.size().capacity()) + ", " + share(1 - seen),
                    x,
                    Math.max(BESIDE * floor, failing(seen)),
                    CurvePlot.CIRCLE,
                    Palette.PROCESS);
        }
    }

    private String reading(double value, Optional<String> ends) {
        String text = "With " + length(value) + ends.orElse("") + " the share run through reaches the target of "
                + ChartUnits.target(sizing.target());
        String now = sizing.present()
                .filter(point -> point.share().isPresent())
                .map(this::asItIs)
                .orElse("");
        boolean isFloorReached = sizing.curve().stream().anyMatch(point -> point.envelope() >= 1);
        return text + now + "." + (isFloorReached ? " Where the curve meets the lower edge none failed." : "");
    }

    private String asItIs(Sizing.Point now) {
        return "; with " + length(now.size().capacity()) + ", as it is now, it is "
                + share(now.share().orElseThrow().mean())
                + now.lostTime()
                        .map(lost -> ", and " + Numbers.text(Unit.HOUR.fromSi(lost.mean()), 3) + " h a year are lost")
                        .orElse("");
    }

    private Optional<String> ends(Crossing found) {
        boolean isKnown =
                sizing.chance() && found.low().isPresent() && found.high().isPresent();
        return isKnown
                ? Optional.of(" (95 % interval "
                        + Numbers.text(unit.fromSi(found.low().getAsDouble()), 3) + " to "
                        + length(found.high().getAsDouble()) + ")")
                : Optional.empty();
    }

    /** Nowhere rising, since more capacity is never worse under the same random numbers; in steps where nothing is random. */
    private List<CurvePlot.Point> failing() {
        List<CurvePlot.Point> points = new ArrayList<>();
        double low = 0;
        double high = 0;
        for (Sizing.Point point : sizing.curve()) {
            Optional<Interval> interval =
                    point.share().flatMap(share -> share.interval()).filter(i -> sizing.chance());
            double x = capacity(point);
            if (!sizing.chance() && !points.isEmpty()) {
                CurvePlot.Point before = points.get(points.size() - 1);
                points.add(new CurvePlot.Point(x, before.y(), before.low(), before.high()));
            }
            low = Math.max(low, interval.map(Interval::low).orElse(point.envelope()));
            high = Math.max(high, interval.map(Interval::high).orElse(point.envelope()));
            points.add(new CurvePlot.Point(x, failing(point.envelope()), failing(high), failing(low)));
        }
        return points;
    }

    private String length(double metres) {
        return context.units().length(metres);
    }

    private String share(double share) {
        return context.units().share(share);
    }
}
