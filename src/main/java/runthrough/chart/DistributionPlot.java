package runthrough.chart;

import java.awt.Color;
import java.awt.Stroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;

/**
 * A histogram with marked values. The marks' names stand above all bars, the leftmost highest, each line ending at its
 * name, so that no name is crossed by another's line.
 */
public final class DistributionPlot {
    public static final int HEIGHT = 400;

    /** Height of a line of text as share of the height of the plot. */
    private static final double LINE = 0.062;
    /** Width of the plot itself (px), or a little less. */
    private static final double PLOT_WIDTH = 800;

    private final ChartStyle style;
    private final Histogram histogram;
    private final List<Mark> marks = new ArrayList<>();

    public DistributionPlot(ChartStyle style, Histogram histogram) {
        this.style = style;
        this.histogram = histogram;
    }

    /** A value worth a line and a name; {@code at} in the unit shown. */
    private record Mark(double at, String name, Color colour, Stroke stroke) {}

    /** Marks a value. */
    public void mark(double at, String name, Color colour, Stroke stroke) {
        marks.add(new Mark(at, name, colour, stroke));
    }

    /** The plot; {@code colour} gives each bin's. */
    public XYPlot plot(String axisLabel, IntFunction<Color> colour) {
        return plot(axisLabel, "share of coil changes, %", colour);
    }

    /** The plot of something other than coil changes, of which {@code rangeLabel} says the share. */
    public XYPlot plot(String axisLabel, String rangeLabel, IntFunction<Color> colour) {
        // What is beyond the right edge stands highest: its name is at the right, where a line must not cross it.
        marks.sort(Comparator.comparing((Mark mark) -> !isBeyond(mark)).thenComparingDouble(Mark::at));
        NumberAxis domain = style.axis(axisLabel);
        double from = Math.min(histogram.left(0), least());
        double to = Math.max(histogram.to(), greatest());
        double room = 0.02 * (to - from);
        ChartStyle.reach(domain, from - room, Math.max(to + room, rightOfNames(from - room)));
        NumberAxis range = style.axis(rangeLabel);
        double band = LINE * (marks.size() + 0.5);
        ChartStyle.reach(range, 0, 100 * histogram.greatestShare() / (1 - band));
        XYPlot plot = style.plot(domain, range);
        HistogramBars.put(plot, histogram, colour);
        draw(plot, range.getUpperBound());
        return plot;
    }

    /** Shades a region of the axis behind the bars. */
    public static void shade(XYPlot plot, double from, double to, Color colour) {
        IntervalMarker region = new IntervalMarker(from, to, colour);
        region.setAlpha(1);
        plot.addDomainMarker(region, Layer.BACKGROUND);
    }

    private void draw(XYPlot plot, double top) {
        for (int row = 0; row < marks.size(); row++) {
            Mark mark = marks.get(row);
            double y = top * (1 - LINE * (row + 0.75));
            if (isBeyond(mark)) {
                style.name(plot, mark.name() + " → ", plot.getDomainAxis().getUpperBound(), y, TextAnchor.CENTER_RIGHT);
            } else if (isBelow(mark)) {
                style.name(plot, " ← " + mark.name(), plot.getDomainAxis().getLowerBound(), y, TextAnchor.CENTER_LEFT);
            } else {
                plot.addAnnotation(new XYLineAnnotation(mark.at(), 0, mark.at(), y, mark.stroke(), mark.colour()));
                style.name(plot, " " + mark.name(), mark.at(), y, TextAnchor.CENTER_LEFT);
            }
        }
    }

    /** Whether a value lies where only what is counted apart does. */
    private boolean isBeyond(Mark mark) {
        return histogram.beyond() > 0 && mark.at() > histogram.to();
    }

    private boolean isBelow(Mark mark) {
        return histogram.below() > 0 && mark.at() < histogram.left(0);
    }

    private boolean isOnTheAxis(Mark mark) {
        return !isBeyond(mark) && !isBelow(mark);
    }

    /** Where the axis must end for every name to fit on it. */
    private double rightOfNames(double from) {
        double right = from;
        for (Mark mark : marks) {
            if (isOnTheAxis(mark)) {
                double share = style.width(mark.name() + "  ") / PLOT_WIDTH;
                right = Math.max(right, (mark.at() - from * share) / (1 - share));
            }
        }
        return right;
    }

    private double least() {
        return marks.stream()
                .filter(this::isOnTheAxis)
                .mapToDouble(Mark::at)
                .min()
                .orElse(histogram.left(0));
    }

    private double greatest() {
        return marks.stream()
                .filter(this::isOnTheAxis)
                .mapToDouble(Mark::at)
                .max()
                .orElse(histogram.left(0));
    }
}
