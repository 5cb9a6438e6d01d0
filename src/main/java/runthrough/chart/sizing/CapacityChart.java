package runthrough.chart.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.CurvePlot;
import runthrough.chart.Palette;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Sizing;
import runthrough.study.statistics.Interval;

/** Share of coil changes run through against the capacity of the accumulator. */
public final class CapacityChart {
    private static final int HEIGHT = 470;
    /** So many times what is missing to all, now or at four times the target's allowance, is shown below all. */
    private static final double FURTHER = 1.3;

    private final ChartContext context;
    private final Sizing sizing;
    private final Unit unit;

    private CapacityChart(ChartContext context, Sizing sizing) {
        this.context = context;
        this.sizing = sizing;
        this.unit = context.units().length();
    }

    /** Share against capacity; none where no capacity was found. */
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
        List<CurvePlot.Point> points = points();
        double floor = floor();
        domain.setRange(start(points, floor), points.get(points.size() - 1).x());
        CurvePlot plot = new CurvePlot(context.style(), legend, domain, "share of coil changes run through, %");
        plot.curve("share run through", points, sizing.chance() ? "its 95 % interval" : "");
        plot.across("target: " + share(sizing.target()), Unit.PERCENT.fromSi(sizing.target()));
        Optional<String> ends = ends(found);
        if (ends.isPresent()) {
            plot.interval(
                    unit.fromSi(found.low().orElseThrow()),
                    unit.fromSi(found.high().orElseThrow()),
                    Unit.PERCENT.fromSi(sizing.target()),
                    0.015 * (100 - floor));
        }
        String smallest = "smallest that meets the target: " + length(value) + ends.orElse("");
        plot.mark(smallest, unit.fromSi(value), Unit.PERCENT.fromSi(sizing.target()), CurvePlot.DIAMOND, Palette.EDGE);
        present(plot, domain);
        String reading = reading(value, ends);
        String title = "How much the accumulator must hold";
        return new Chart(
                "capacity",
                title,
                reading,
                "A curve that rises with the capacity, its band of uncertainty, and the target as a line across. "
                        + reading,
                context.style().picture(title, plot.within(floor, 100 + 0.03 * (100 - floor)), legend, HEIGHT));
    }

    /** The axis begins a little below the target and the share as it is: what matters lies between there and all. */
    private double floor() {
        double seen = sizing.present()
                .flatMap(Sizing.Point::share)
                .map(share -> share.mean())
                .orElse(sizing.target());
        double missing = Math.max(1 - seen, 4 * (1 - sizing.target()));
        return Unit.PERCENT.fromSi(Math.max(0, 1 - FURTHER * missing));
    }

    /** Where the curve comes up over {@code floor}, and a little before. */
    private static double start(List<CurvePlot.Point> points, double floor) {
        double before = points.get(0).x();
        double end = points.get(points.size() - 1).x();
        for (int i = 1; i < points.size(); i++) {
            CurvePlot.Point low = points.get(i - 1);
            CurvePlot.Point high = points.get(i);
            if (low.y() < floor && high.y() > floor) {
                before = low.x() + (high.x() - low.x()) * (floor - low.y()) / (high.y() - low.y());
            }
        }
        return Math.max(points.get(0).x(), before - 0.04 * (end - before));
    }

    private void present(CurvePlot plot, NumberAxis domain) {
        Sizing.Point now = sizing.present().orElseThrow();
        double x = unit.fromSi(now.size().capacity());
        if (now.share().isPresent() && domain.getRange().contains(x)) {
            double seen = now.share().get().mean();
            plot.mark(
                    "as it is: " + length(now.size().capacity()) + ", " + share(seen),
                    x,
                    Unit.PERCENT.fromSi(seen),
                    CurvePlot.CIRCLE,
                    Palette.PROCESS);
        }
    }

    private String reading(double value, Optional<String> ends) {
        String text = "With " + length(value) + ends.orElse("") + " the share run through reaches the target of "
                + share(sizing.target());
        return sizing.present()
                .flatMap(Sizing.Point::share)
                .map(now -> text + "; with "
                        + length(sizing.present().orElseThrow().size().capacity()) + ", as it is now, it is "
                        + share(now.mean()) + ".")
                .orElse(text + ".");
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

    /** Nowhere falling, since more capacity is never worse under the same random numbers; in steps where nothing is random. */
    private List<CurvePlot.Point> points() {
        List<CurvePlot.Point> points = new ArrayList<>();
        double low = 0;
        double high = 0;
        for (Sizing.Point point : sizing.curve()) {
            Optional<Interval> interval =
                    point.share().flatMap(share -> share.interval()).filter(i -> sizing.chance());
            double x = unit.fromSi(point.size().capacity());
            if (!sizing.chance() && !points.isEmpty()) {
                CurvePlot.Point before = points.get(points.size() - 1);
                points.add(new CurvePlot.Point(x, before.y(), before.low(), before.high()));
            }
            low = Math.max(low, interval.map(Interval::low).orElse(point.envelope()));
            high = Math.max(high, interval.map(Interval::high).orElse(point.envelope()));
            points.add(new CurvePlot.Point(
                    x, Unit.PERCENT.fromSi(point.envelope()), Unit.PERCENT.fromSi(low), Unit.PERCENT.fromSi(high)));
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
