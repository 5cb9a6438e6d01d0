package runthrough.chart.verdict;

import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Palette;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Trace;

/** One coil change in close-up: level, speeds and the work elements as bars, all over the same time. */
final class CloseUpChart {
    private static final int ROW_HEIGHT = 22;

    private CloseUpChart() {}

    static Chart of(ChartContext context, Replication replication) {
        ChartStyle style = context.style();
        Trace trace = replication.trace().orElseThrow();
        ChangeRecord change = FeaturedChange.of(context, replication.changes());
        TraceWindow window = window(trace, change);
        WorkBars bars = new WorkBars(context.line(), change, replication.work(), window.from(), window.to());
        TracePlots plots = new TracePlots(context, window, change.start());
        NumberAxis time = plots.timeAxis("from the start of the coil change");
        CombinedDomainXYPlot combined = style.combined(time);
        boolean stores = context.stores();
        if (stores) {
            combined.add(named(marked(plots.level(trace.capacity()), plots, change), context, plots, change), 190);
        }
        XYPlot speeds = marked(plots.speeds(), plots, change);
        combined.add(stores ? speeds : named(speeds, context, plots, change), 120);
        int barsHeight = ROW_HEIGHT * bars.rows().size() + 8;
        if (bars.rows().size() > 0) {
            combined.add(marked(WorkPlot.of(bars, style, plots), plots, change), barsHeight);
        }
        String title = context.ofFirst(
                "Coil change " + change.number() + " in close-up, " + FeaturedChange.why(context, change));
        int height = (stores ? 190 : 0) + 120 + barsHeight + 170;
        String reading = reading(change, context);
        return new Chart(
                "close-up",
                title,
                reading,
                "Over one time axis: " + (stores ? "the level in the accumulator, " : "")
                        + (stores ? "entry and process speed" : "the strip speed") + ", and "
                        + "each work element of the coil change as a bar. " + reading,
                style.picture(title, combined, plots.legend(), height));
    }

    /** Until matched, or one and a half times as long as the strip stood; with room before the start for a name. */
    private static TraceWindow window(Trace trace, ChangeRecord change) {
        double stood = change.released() - change.start();
        double refill = Double.isNaN(change.refillTime()) ? 1.5 * stood : change.refillTime();
        double after = stood + Math.min(1.15 * refill, 1.5 * stood);
        return TraceWindow.of(trace, List.of(change), change.start() - 0.1 * after, change.start() + after);
    }

    private static XYPlot marked(XYPlot plot, TracePlots plots, ChangeRecord change) {
        plots.shadeChanges(plot);
        for (double instant : new double[] {change.start(), change.tailStopped(), change.released()}) {
            ValueMarker marker = new ValueMarker(plots.x(instant), Palette.FAINT, Palette.THIN);
            marker.setAlpha(1);
            plot.addDomainMarker(marker, Layer.BACKGROUND);
        }
        return plot;
    }

    /** Says above the data what the three instants are. */
    private static XYPlot named(XYPlot plot, ChartContext context, TracePlots plots, ChangeRecord change) {
        ChartStyle style = context.style();
        double top = plot.getRangeAxis().getUpperBound();
        String end = context.line().practice().hasJoiner() ? " joint released" : " threaded";
        style.name(plot, "begins ", plots.x(change.start()), top, TextAnchor.TOP_RIGHT);
        style.name(plot, " tail stopped", plots.x(change.tailStopped()), top, TextAnchor.TOP_LEFT);
        style.name(plot, end, plots.x(change.released()), top, TextAnchor.TOP_LEFT);
        return plot;
    }

    private static String waiting(ChangeRecord change, ChartUnits units) {
        String both = change.waitingForPreparation() > 0 && change.waitingForPeople() > 0
                ? units.time(change.waitingForPreparation()) + " of it waiting for preparation and "
                : "";
        return change.waitingForPeople() > 0
                ? both + units.time(change.waitingForPeople()) + " of it waiting for people"
                : units.time(change.waitingForPreparation()) + " of it waiting for preparation";
    }

    private static String reading(ChangeRecord change, ChartContext context) {
        ChartUnits units = context.units();
        String where = context.line().practice().hasJoiner() ? " at the joiner" : "";
        String text = "The strip stands" + where + " for " + units.time(change.jointCycleTime());
        if (change.waiting() > 0) {
            text += ", " + waiting(change, units);
        }
        if (change.passes() > 1) {
            text += ", the joint being made " + change.passes() + " times";
        }
        if (!context.stores()) {
            return text + ".";
        }
        return text
                + (Double.isNaN(change.refillTime())
                        ? "; the accumulator is not full again before the next coil change."
                        : "; the accumulator is full again " + units.time(change.refillTime()) + " after release.");
    }
}
