package runthrough.chart.verdict;

import java.util.Comparator;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Palette;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.Trace;

/**
 * Level over time above the two speeds, with the coil changes marked: a stretch of a few coil changes around the one that
 * came nearest to a stop, or furthest below.
 */
final class LevelChart {
    /** How many coil changes before and after that one are shown. */
    private static final int NEIGHBOURS = 2;

    private LevelChart() {}

    /** The chart of {@code replication}, which must hold a trace and a coil change. */
    static Chart of(ChartContext context, Replication replication) {
        Trace trace = replication.trace().orElseThrow();
        List<ChangeRecord> changes = replication.changes();
        ChangeRecord featured = FeaturedChange.of(context, changes);
        TraceWindow window = window(trace, changes, featured);
        TracePlots plots = new TracePlots(context, window, 0);
        NumberAxis time = plots.timeAxis("since the start of the run");
        CombinedDomainXYPlot combined = context.style().combined(time);
        boolean stores = context.stores();
        if (stores) {
            XYPlot level = plots.level(trace.capacity());
            plots.shadeChanges(level);
            plots.numberChanges(level);
            combined.add(level, 3);
        }
        XYPlot speeds = plots.speeds();
        plots.shadeChanges(speeds);
        if (!stores) {
            plots.numberChanges(speeds);
        }
        combined.add(speeds, 2);
        plots.legend().add(ChartStyle.box("coil change, with its number", Palette.CHANGE));
        String title = context.ofFirst(title(window, stores));
        String reading = stores ? reading(featured, context) : speedReading(window, context.units());
        return new Chart(
                "level",
                title,
                reading,
                alternative(window, stores, reading),
                context.style().picture(title, combined, plots.legend(), stores ? 560 : 340));
    }

    private static TraceWindow window(Trace trace, List<ChangeRecord> changes, ChangeRecord featured) {
        int at = changes.indexOf(featured);
        int first = Math.max(0, Math.min(at - NEIGHBOURS, changes.size() - 2 * NEIGHBOURS - 1));
        int last = Math.min(changes.size() - 1, first + 2 * NEIGHBOURS);
        double cycle = (changes.get(last).released() - changes.get(first).start()) / (last - first + 1);
        double from = Math.max(
                first == 0 ? 0 : changes.get(first - 1).released(),
                changes.get(first).start() - 0.1 * cycle);
        double to = last + 1 < changes.size() ? changes.get(last + 1).start() : Double.MAX_VALUE;
        return TraceWindow.of(trace, changes, from, to);
    }

    private static String title(TraceWindow window, boolean stores) {
        return (stores ? "Level in the accumulator, and strip speeds" : "Strip speed") + ": " + span(window);
    }

    private static String span(TraceWindow window) {
        int first = window.changes().get(0).number();
        int last = window.changes().get(window.changes().size() - 1).number();
        return first == last ? "coil change " + first : "coil changes " + first + " to " + last;
    }

    private static String reading(ChangeRecord featured, ChartContext context) {
        ChartUnits units = context.units();
        String where = "At coil change " + featured.number() + " the level falls to "
                + units.length(featured.lowestLevel()) + ", ";
        double margin = featured.lowestAboveStopLevel();
        if (margin >= 0) {
            return where + units.length(margin) + " above the level at which the process must stop.";
        }
        String below = where + units.length(-margin) + " below the level at which ";
        String stopLevel = " must stop (" + units.length(featured.stopLevel()) + ").";
        return context.line().process().slowing().isEmpty()
                ? below + "the process" + stopLevel
                : below + "a process at its rated speed" + stopLevel
                        + (featured.outcome() == Outcome.STOPPED ? "" : " It slows before, and does not stop.");
    }

    private static String speedReading(TraceWindow window, ChartUnits units) {
        ChangeRecord longest = window.changes().stream()
                .max(Comparator.comparingDouble(ChangeRecord::jointCycleTime))
                .orElseThrow();
        return "Every coil change stops the process; at coil change " + longest.number() + " the strip stands for "
                + units.time(longest.jointCycleTime()) + ".";
    }

    private static String alternative(TraceWindow window, boolean stores, String reading) {
        return (stores
                        ? "Two curves over the same time axis: above, the level in the accumulator with the stop level and "
                                + "the capacity; below, entry speed and process speed. "
                        : "Strip speed over time. ")
                + "Shaded: " + span(window) + ". " + reading;
    }
}
