package runthrough.chart.validation;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import runthrough.chart.Chart;
import runthrough.chart.ChartStyle;
import runthrough.chart.Histogram;
import runthrough.chart.HistogramBars;
import runthrough.chart.Palette;
import runthrough.quantity.Numbers;

/** Differences between two ways to the same numbers, by powers of ten, beside the greatest that is allowed. */
public final class ErrorChart {
    private static final int HEIGHT = 320;
    /** Powers of ten shown below that of what is allowed, at least and at most; what is less joins the lowest. */
    private static final int FEWEST = 4;

    private static final int MOST = 9;

    private final List<Double> errors;
    private final double tolerance;
    /** Power of ten below which an error is in the lowest bin but that of none; -8 stands for 1e-8. */
    private final int lowest;

    private final int highest;

    private ErrorChart(List<Double> errors, double tolerance) {
        this.errors = List.copyOf(errors);
        this.tolerance = tolerance;
        this.highest = power(Math.max(tolerance, greatest()));
        double least = errors.stream()
                .mapToDouble(Double::doubleValue)
                .filter(e -> e > 0)
                .min()
                .orElse(tolerance);
        this.lowest = Math.min(highest - FEWEST, Math.max(highest - MOST, power(least)));
    }

    /**
     * The chart.
     *
     * @param id unique in its document
     * @param title what was compared
     * @param each what there is one error for, such as "random line"
     * @param tolerance greatest error allowed, {@code > 0}
     * @param errors at least one, each {@code >= 0}
     */
    public static Chart of(String id, String title, String each, double tolerance, List<Double> errors) {
        return new ErrorChart(errors, tolerance).chart(id, title, each);
    }

    private Chart chart(String id, String title, String each) {
        ChartStyle style = new ChartStyle();
        Histogram histogram = new Histogram(-0.5, 1, counts(), 0, 0, errors.size());
        NumberAxis range = style.axis("share of all, %");
        range.setRange(0, 112 * histogram.greatestShare());
        XYPlot plot = style.plot(axis(style), range);
        HistogramBars.put(plot, histogram, i -> i == 0 ? Palette.OTHER : Palette.ENOUGH);
        limit(style, plot, range.getUpperBound());
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(ChartStyle.box("no difference at all", Palette.OTHER));
        legend.add(ChartStyle.box("some", Palette.ENOUGH));
        String reading = reading(each);
        return new Chart(
                id,
                title,
                reading,
                "Histogram of " + errors.size() + " differences by powers of ten. " + reading,
                style.picture(title, plot, legend, HEIGHT));
    }

    private SymbolAxis axis(ChartStyle style) {
        String[] names = IntStream.rangeClosed(lowest - 1, highest)
                .mapToObj(power -> power < lowest ? "none" : "1e" + power)
                .toArray(String[]::new);
        SymbolAxis axis = new SymbolAxis("difference below", names);
        axis.setGridBandsVisible(false);
        style.styled(axis);
        Font font = axis.getTickLabelFont();
        axis.setTickLabelFont(font.deriveFont(11.5f));
        axis.setRange(-0.6, names.length - 0.3);
        return axis;
    }

    private void limit(ChartStyle style, XYPlot plot, double top) {
        double at = Math.log10(tolerance) - lowest + 1.5;
        plot.addAnnotation(new XYLineAnnotation(at, 0, at, top, Palette.BOLD, Palette.LIMIT));
        style.name(plot, "allowed: " + scientific(tolerance) + "  ", at, 0.94 * top, TextAnchor.CENTER_RIGHT);
    }

    private List<Integer> counts() {
        int[] counts = new int[highest - lowest + 2];
        for (double error : errors) {
            counts[error == 0 ? 0 : Math.max(power(error), lowest) - lowest + 1]++;
        }
        List<Integer> list = new ArrayList<>();
        for (int count : counts) {
            list.add(count);
        }
        return list;
    }

    private String reading(String each) {
        long none = errors.stream().filter(error -> error == 0).count();
        double greatest = greatest();
        String which = none == errors.size()
                ? "all are none"
                : (none == 0 ? "" : none + " are none, ") + "the greatest is below 1e" + power(greatest);
        return "One difference for each " + each + ", " + errors.size() + " of them: " + which + "; allowed is "
                + scientific(tolerance) + ".";
    }

    private double greatest() {
        return errors.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    /** The least whole power of ten that is not below {@code error}, which is {@code > 0}. */
    private static int power(double error) {
        return (int) Math.ceil(Math.log10(error) - 1e-9);
    }

    private static String scientific(double value) {
        int power = (int) Math.floor(Math.log10(value) + 1e-9);
        return Numbers.text(value / Math.pow(10, power), 3) + "e" + power;
    }
}
