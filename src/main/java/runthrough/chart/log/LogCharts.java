package runthrough.chart.log;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.CurvePlot;
import runthrough.chart.DistributionPlot;
import runthrough.chart.Histogram;
import runthrough.chart.Palette;
import runthrough.quantity.Unit;
import runthrough.study.logged.FigureComparison;
import runthrough.study.logged.LogComparison;
import runthrough.study.logged.LogComparison.JointShare;
import runthrough.study.logged.LogFigure;

/** The line's log against simulated ones: the share run through, and how joint cycle times spread. */
public final class LogCharts {
    private static final int HEIGHT = 440;

    private final ChartContext context;
    private final LogComparison comparison;

    private LogCharts(ChartContext context, LogComparison comparison) {
        this.context = context;
        this.comparison = comparison;
    }

    /** A log of the line against simulated ones. */
    public static List<Chart> of(LogComparison comparison) {
        return of(ChartContext.of(comparison.request(), comparison.simulatedLogs()), comparison);
    }

    static List<Chart> of(ChartContext context, LogComparison comparison) {
        LogCharts charts = new LogCharts(context, comparison);
        List<Chart> all = new ArrayList<>();
        if (comparison.simulatedLogs() > 1) {
            all.add(charts.share());
        }
        all.add(charts.jointCycleTimes());
        return all;
    }

    private Chart share() {
        FigureComparison share = comparison.of(LogFigure.SHARE_RUN_THROUGH);
        Histogram histogram = Histogram.of(share.simulated(), 100);
        DistributionPlot distribution = new DistributionPlot(context.style(), histogram);
        distribution.mark(100 * share.low(), "2.5 % of simulated logs are below", Palette.PROCESS, Palette.DASHES);
        distribution.mark(100 * share.high(), "97.5 % are at most here", Palette.PROCESS, Palette.DASHES);
        distribution.mark(100 * share.logged(), "your line: " + percent(share.logged()), Palette.LIMIT, Palette.BOLD);
        XYPlot plot = distribution.plot(
                "coil changes of a log run through, %", "share of simulated logs, %", i -> Palette.ENOUGH);
        String title = "Share of coil changes run through: your line's log among simulated ones of its length";
        String reading = "The line ran through " + percent(share.logged()) + " of "
                + comparison.log().changes().size() + " coil changes; 95 % of the simulated logs lie between "
                + percent(share.low()) + " and " + percent(share.high()) + ".";
        return new Chart(
                "log-share",
                title,
                reading,
                "Histogram of the shares of " + share.simulated().count() + " simulated logs. " + reading,
                context.style().picture(title, plot, new LegendItemCollection(), DistributionPlot.HEIGHT));
    }

    private Chart jointCycleTimes() {
        List<JointShare> shares = comparison.jointCycleTimes();
        double longest = shares.get(shares.size() - 1).time();
        Unit clock = ChartUnits.clock(longest);
        LegendItemCollection legend = new LegendItemCollection();
        NumberAxis domain = context.style().axis("joint cycle time, " + clock.symbol());
        ChartStyle.reach(domain, clock.fromSi(shares.get(0).time()), clock.fromSi(longest));
        CurvePlot plot = new CurvePlot(context.style(), legend, domain, "share of joints that take no longer, %");
        plot.curve(
                "the model",
                shares.stream()
                        .map(share -> new CurvePlot.Point(
                                clock.fromSi(share.time()),
                                100 * share.simulated(),
                                100 * share.low(),
                                100 * share.high()))
                        .toList(),
                comparison.simulatedLogs() > 1 ? "95 % of simulated logs of this length" : "");
        Color own = Palette.LIMIT;
        plot.further(
                "your line's log",
                shares.stream().mapToDouble(share -> clock.fromSi(share.time())).toArray(),
                shares.stream().mapToDouble(share -> 100 * share.logged()).toArray(),
                own,
                Palette.DASHES);
        String title = "Joint cycle times: your line's log and the model";
        FigureComparison mean = comparison.of(LogFigure.JOINT_CYCLE_TIME);
        FigureComparison tall = comparison.of(LogFigure.LONG_JOINT_CYCLE_TIME);
        String reading = "The " + comparison.log().joints().size() + " logged joints take "
                + context.units().time(mean.logged()) + " on average and 90 % at most "
                + context.units().time(tall.logged()) + "; in the model it is "
                + context.units().time(mean.mean()) + " and " + context.units().time(tall.mean()) + ".";
        return new Chart(
                "log-joint-cycle-times",
                title,
                reading,
                "Two curves of the share of joints that take no longer than a time. " + reading,
                context.style().picture(title, plot.within(0, 100), legend, HEIGHT));
    }

    private String percent(double share) {
        return context.units().share(share);
    }
}
