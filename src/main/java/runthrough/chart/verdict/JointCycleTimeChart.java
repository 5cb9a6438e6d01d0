package runthrough.chart.verdict;

import java.util.OptionalDouble;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartUnits;
import runthrough.chart.DistributionPlot;
import runthrough.chart.Histogram;
import runthrough.chart.Palette;
import runthrough.plant.Line;
import runthrough.quantity.Unit;
import runthrough.study.statistics.Sample;

/** How long the strip stands at the joiner: a histogram with percentiles, and the longest time that the storage bridges. */
final class JointCycleTimeChart {
    private static final double[] PERCENTILES = {0.5, 0.9, 0.95, 0.99};
    /** A limit this many times the longest joint cycle time or more would leave the picture empty. */
    private static final double FAR = 1.8;

    private final ChartContext context;
    private final Sample times;
    private final OptionalDouble longest;
    private final boolean rethread;
    private final Unit clock;

    private JointCycleTimeChart(ChartContext context, Sample times, OptionalDouble longest) {
        this.context = context;
        this.times = times;
        this.longest = longest;
        // What is drawn; the few that take far longer are not to set the scale.
        double drawn = Histogram.of(times, 1).to();
        this.clock = ChartUnits.clock(isNear(longest) ? Math.max(drawn, longest.getAsDouble()) : drawn);
        this.rethread = !context.line().practice().hasJoiner();
    }

    /**
     * The chart of the joint cycle times of all replications.
     *
     * @param longest joint cycle time (s) that a full accumulator bridges at the fastest rated speed, where there is an accumulator
     */
    static Chart of(ChartContext context, Sample times, OptionalDouble longest) {
        return new JointCycleTimeChart(context, times, longest).chart();
    }

    private Chart chart() {
        Histogram histogram = Histogram.of(times, clock.fromSi(1));
        DistributionPlot distribution = new DistributionPlot(context.style(), histogram);
        mark(distribution);
        String name = rethread ? "standing time" : "joint cycle time";
        XYPlot plot = distribution.plot(name + ", " + clock.symbol(), i -> Palette.ENOUGH);
        String title = rethread
                ? "Standing time: how long the strip stands for rethreading"
                : "Joint cycle time: how long the strip stands at the joiner";
        String reading = reading(histogram);
        return new Chart(
                "joint-cycle-time",
                title,
                reading,
                "Histogram of " + times.count() + " times from " + text(times.percentile(0)) + " to "
                        + text(times.percentile(1)) + ". " + reading,
                context.style().picture(title, plot, new LegendItemCollection(), DistributionPlot.HEIGHT));
    }

    private void mark(DistributionPlot distribution) {
        if (varies()) {
            for (double p : PERCENTILES) {
                double value = times.percentile(p);
                String name = Math.round(100 * p) + " % take at most " + text(value);
                distribution.mark(clock.fromSi(value), name, Palette.PROCESS, Palette.DASHES);
            }
        }
        longest.ifPresent(limit -> {
            if (isNear(longest)) {
                String name = "longest that a full accumulator bridges" + atWhat() + ": " + text(limit);
                distribution.mark(clock.fromSi(limit), name, Palette.LIMIT, Palette.BOLD);
            }
        });
    }

    /** Whether the longest time that the accumulator bridges is drawn. */
    private boolean isNear(OptionalDouble limit) {
        return limit.orElse(0) > 0 && limit.orElse(0) <= FAR * times.percentile(1);
    }

    private String reading(Histogram histogram) {
        String each = rethread ? "rethreadings" : "joints";
        String text = varies()
                ? "Half of the " + each + " take at most " + text(times.percentile(0.5)) + ", 95 % at most "
                        + text(times.percentile(0.95))
                : "Each of the " + each + " takes " + text(times.percentile(0));
        if (histogram.beyond() > 0) {
            text += "; " + context.units().share(histogram.shareBeyond()) + " take longer than the "
                    + text(clock.toSi(histogram.to())) + " shown, up to " + text(times.percentile(1));
        }
        return text + (longest.isPresent() ? bridged(longest.getAsDouble()) : "") + ".";
    }

    private String bridged(double limit) {
        if (!(limit > 0)) {
            return "; at this speed the accumulator bridges no joint at all" + atWhat();
        }
        double longer = 1 - times.shareBelow(Math.nextUp(limit));
        String which = longer == 0
                ? "none takes"
                : longer == 1 ? "all take" : context.units().share(longer) + " take";
        return "; a full accumulator bridges " + text(limit) + atWhat() + ", and " + which + " longer";
    }

    /** Coils with speeds of their own do not all leave the same time, and a process that slows stops later. */
    private String atWhat() {
        Line line = context.line();
        return (line.process().slowing().isPresent() ? " without slowing" : "")
                + (line.slowestRatedSpeed() < line.fastestRatedSpeed() ? " at the fastest process speed" : "");
    }

    private boolean varies() {
        return times.percentile(1) > times.percentile(0);
    }

    private String text(double seconds) {
        return context.units().time(seconds);
    }
}
