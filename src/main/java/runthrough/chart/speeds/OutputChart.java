package runthrough.chart.speeds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.CurvePlot;
import runthrough.chart.Palette;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.study.search.Crossing;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.speed.SpeedCurve.Where;
import runthrough.study.speed.SpeedPoint;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** What comes out against the rated process speed, above the share of coil changes run through. */
public final class OutputChart {
    private static final int HEIGHT = 640;
    /** Beside the range, as a part of it. */
    private static final double MARGIN = 0.025;
    /** Half of a mark on the axis of shares, in percent. */
    private static final double BESIDE = 6;

    private final ChartContext context;
    private final SpeedCurve curve;
    private final boolean chance;
    private final Unit speed;
    private final Unit output;
    private final List<SpeedPoint> points;

    private OutputChart(ChartContext context, SpeedCurve curve) {
        this.context = context;
        this.curve = curve;
        this.chance = !curve.request().line().isDeterministic();
        this.speed = context.units().speed();
        this.output = context.units().units().unit(Kind.RATE_LENGTH);
        this.points = Stream.concat(
                        curve.points().stream(), Stream.of(curve.peak().at()))
                .distinct()
                .sorted(Comparator.comparingDouble(SpeedPoint::speed))
                .toList();
    }

    /** Output and share against process speed. */
    public static Chart of(SpeedCurve curve) {
        return of(ChartContext.of(curve.request()), curve);
    }

    static Chart of(ChartContext context, SpeedCurve curve) {
        return new OutputChart(context, curve).chart();
    }

    private Chart chart() {
        LegendItemCollection legend = new LegendItemCollection();
        String fastest = curve.scaledAlike() ? "fastest rated process speed, " : "rated process speed, ";
        NumberAxis domain = context.style().axis(fastest + speed.symbol());
        // A mark at an end of the range stands inside the frame.
        double margin = MARGIN * (curve.to() - curve.from());
        ChartStyle.reach(domain, speed.fromSi(curve.from() - margin), speed.fromSi(curve.to() + margin));
        CombinedDomainXYPlot both = context.style().combined(domain);
        output(both, legend);
        share(both, legend);
        String reading = reading();
        return new Chart(
                "output",
                "What comes out, and what runs through, against process speed",
                reading,
                "Two curves over the same axis of speed: above, output; below, the share of coil changes run through with the"
                        + " target as a line across. " + reading,
                context.style()
                        .picture("What comes out, and what runs through, against process speed", both, legend, HEIGHT));
    }

    private void output(CombinedDomainXYPlot both, LegendItemCollection legend) {
        SpeedPoint peak = curve.peak().at();
        CurvePlot plot = new CurvePlot(context.style(), legend, null, "output, " + output.symbol());
        if (curve.peak().where() == Where.INSIDE) {
            plot.shade(
                    "faster gives less",
                    speed.fromSi(peak.speed()),
                    speed.fromSi(curve.peak().fastest()));
        }
        plot.curve(
                "output; share run through", curve(SpeedPoint::output, output), chance ? "their 95 % intervals" : "");
        plot.known(
                "output if nothing ever stopped it",
                speed.fromSi(curve.from()),
                output.fromSi(curve.from()),
                speed.fromSi(curve.to()),
                output.fromSi(curve.to()));
        plot.mark(
                "most comes out: " + output(peak) + " at " + speed(peak.speed()),
                speed.fromSi(peak.speed()),
                output.fromSi(peak.output().mean()),
                CurvePlot.DIAMOND,
                Palette.EDGE);
        SpeedPoint now = curve.present();
        if (isShown(now)) {
            plot.mark(
                    "as it is: " + output(now) + " at " + speed(now.speed()),
                    speed.fromSi(now.speed()),
                    output.fromSi(now.output().mean()),
                    CurvePlot.CIRCLE,
                    Palette.PROCESS);
        }
        both.add(plot.within(0, Double.MAX_VALUE), 3);
    }

    private void share(CombinedDomainXYPlot both, LegendItemCollection legend) {
        CurvePlot plot = new CurvePlot(context.style(), new LegendItemCollection(), null, "run through, %");
        if (curve.peak().where() == Where.INSIDE) {
            plot.shade(
                    "",
                    speed.fromSi(curve.peak().at().speed()),
                    speed.fromSi(curve.peak().fastest()));
        }
        plot.curve("", curve(SpeedPoint::shareRunThrough, Unit.PERCENT), "");
        String target = "target: " + ChartUnits.target(curve.target());
        plot.across("", Unit.PERCENT.fromSi(curve.target()));
        legend.add(ChartStyle.line(target, Palette.LIMIT, Palette.LONG_DASHES));
        lost().ifPresent(limit -> {
            plot.upright("", speed.fromSi(limit), Palette.SECONDARY, Palette.DASH_DOT);
            legend.add(ChartStyle.line("fastest that meets it: " + speed(limit), Palette.SECONDARY, Palette.DASH_DOT));
        });
        SpeedPoint now = curve.present();
        if (isShown(now)) {
            double seen = Unit.PERCENT.fromSi(now.shareRunThrough().mean());
            plot.mark("", speed.fromSi(now.speed()), seen, CurvePlot.CIRCLE, Palette.PROCESS);
        }
        // Beyond 0 and 100 %, so that a mark there is whole.
        both.add(plot.within(-BESIDE, 100 + BESIDE), 2);
    }

    private Optional<Double> lost() {
        return curve.targetLost()
                .filter(crossing -> crossing.found() == Crossing.Found.CROSSED)
                .flatMap(crossing -> crossing.answer().stream().boxed().findFirst());
    }

    private boolean isShown(SpeedPoint now) {
        return curve.from() <= now.speed() && now.speed() <= curve.to();
    }

    private String reading() {
        SpeedPoint peak = curve.peak().at();
        SpeedPoint end = points.get(points.size() - 1);
        String text = "Most comes out at " + speed(peak.speed()) + ": " + output(peak);
        if (curve.peak().where() == Where.INSIDE) {
            text += "; at " + speed(end.speed()) + " it is only " + output(end);
        }
        return text
                + lost().map(limit -> "; the target of " + ChartUnits.target(curve.target()) + " is met up to "
                                + speed(limit))
                        .orElse("")
                + ".";
    }

    private String speed(double metresPerSecond) {
        return ChartUnits.text(metresPerSecond, speed);
    }

    private String output(SpeedPoint point) {
        return ChartUnits.text(point.output().mean(), output);
    }

    private List<CurvePlot.Point> curve(Function<SpeedPoint, Estimate> what, Unit unit) {
        List<CurvePlot.Point> drawn = new ArrayList<>();
        for (SpeedPoint point : points) {
            Estimate estimate = what.apply(point);
            Optional<Interval> interval = estimate.interval().filter(any -> chance);
            drawn.add(new CurvePlot.Point(
                    speed.fromSi(point.speed()),
                    unit.fromSi(estimate.mean()),
                    unit.fromSi(interval.map(Interval::low).orElse(estimate.mean())),
                    unit.fromSi(interval.map(Interval::high).orElse(estimate.mean()))));
        }
        return drawn;
    }
}
