package runthrough.chart;

import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jspecify.annotations.Nullable;
import runthrough.quantity.Amounts;

/** How every chart looks: fonts, axes, grid, title and legend. */
public final class ChartStyle {
    public static final int WIDTH = 900;
    private static final float NAME_SIZE = 12;

    private final ChartFonts fonts = ChartFonts.load();

    public ChartStyle() {
        // The library draws rotated text as outlines unless given otherwise, by a switch for the whole program. We
        // always
        // set it to the same value: text is to stay text.
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    /** A finished drawing of {@code plot}; the legend stands below it, never on the data. */
    public Picture picture(String title, XYPlot plot, LegendItemCollection legend, int height) {
        plot.setFixedLegendItems(legend);
        JFreeChart chart = new JFreeChart(null, fonts.bold(15), plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        chart.setPadding(new RectangleInsets(10, 8, 8, 16));
        TextTitle heading = new TextTitle(title, fonts.bold(15));
        heading.setPaint(Palette.TEXT);
        heading.setHorizontalAlignment(HorizontalAlignment.LEFT);
        heading.setPadding(new RectangleInsets(0, 6, 10, 0));
        chart.setTitle(heading);
        if (legend.getItemCount() > 0) {
            chart.addSubtitle(legend(plot));
        }
        return new Picture(chart, WIDTH, height);
    }

    private LegendTitle legend(XYPlot plot) {
        LegendTitle legend = new LegendTitle(plot);
        legend.setItemFont(fonts.regular(12));
        legend.setItemPaint(Palette.TEXT);
        legend.setFrame(BlockBorder.NONE);
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setHorizontalAlignment(HorizontalAlignment.LEFT);
        legend.setItemLabelPadding(new RectangleInsets(2, 4, 2, 14));
        return legend;
    }

    /** An axis of numbers; ticks at 1, 2 or 5 times a power of ten, written with a decimal point on every machine. */
    public NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setStandardTickUnits(new NumberTickUnitSource(false, Amounts.grouped()));
        axis.setNumberFormatOverride(Amounts.grouped());
        axis.setAutoRangeIncludesZero(false);
        styled(axis);
        // Room between ticks: a number at every second line of text is enough.
        axis.setTickLabelInsets(new RectangleInsets(7, 4, 7, 4));
        return axis;
    }

    /**
     * An axis of whole powers of ten, from the one at or below {@code least} to the one at or above {@code greatest}, with a mark
     * at each whole multiple between.
     *
     * @param least in the unit shown, {@code > 0}
     * @param greatest in the unit shown, {@code >= least}
     */
    public LogAxis powers(String label, double least, double greatest) {
        LogAxis axis = new LogAxis(label);
        int from = (int) Math.floor(Math.log10(least));
        int to = Math.max(from + 1, (int) Math.ceil(Math.log10(greatest)));
        axis.setRange(Math.pow(10, from), Math.pow(10, to));
        DecimalFormat format = Amounts.grouped();
        axis.setNumberFormatOverride(format);
        axis.setTickUnit(new NumberTickUnit(1, format, 9));
        axis.setMinorTickMarksVisible(true);
        styled(axis);
        return axis;
    }

    /** Sets the ends of {@code axis}; where nothing lies between them, as of values that are all alike, it goes on beyond. */
    public static void reach(ValueAxis axis, double from, double to) {
        axis.setRange(from, to > from ? to : from + Math.max(1, Math.abs(from)));
    }

    /** An upright axis of named rows, the first at the top. */
    public SymbolAxis rows(List<String> names) {
        SymbolAxis axis = new SymbolAxis(null, names.toArray(String[]::new));
        styled(axis);
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setInverted(true);
        axis.setGridBandsVisible(false);
        axis.setRange(-0.6, names.size() - 0.4);
        return axis;
    }

    /** Fonts and lines of an axis. */
    public void styled(ValueAxis axis) {
        axis.setLabelFont(fonts.regular(12.5f));
        axis.setLabelPaint(Palette.TEXT);
        axis.setTickLabelFont(fonts.regular(12));
        axis.setTickLabelPaint(Palette.TEXT);
        axis.setAxisLinePaint(Palette.FAINT);
        axis.setTickMarkPaint(Palette.FAINT);
    }

    /** An empty plot on white with a faint grid; without an axis of its own when it shares that of others. */
    public XYPlot plot(@Nullable ValueAxis domain, ValueAxis range) {
        XYPlot plot = new XYPlot(null, domain, range, null);
        grid(plot);
        return plot;
    }

    /** Plots one above the other over the same axis of time. */
    public CombinedDomainXYPlot combined(ValueAxis domain) {
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(domain);
        grid(plot);
        plot.setGap(12);
        return plot;
    }

    /** Background, grid and outline of a plot. */
    private void grid(XYPlot plot) {
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(Palette.GRID);
        plot.setRangeGridlinePaint(Palette.GRID);
        plot.setDomainGridlineStroke(Palette.THIN);
        plot.setRangeGridlineStroke(Palette.THIN);
        plot.setOutlinePaint(Palette.GRID);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    /** Width of {@code text} (px) in the size of names inside a plot. */
    public double width(String text) {
        return fonts.regular(NAME_SIZE)
                .getStringBounds(text, new FontRenderContext(null, true, true))
                .getWidth();
    }

    /** A name inside a plot. */
    public void name(XYPlot plot, String text, double x, double y, TextAnchor anchor) {
        XYTextAnnotation name = new XYTextAnnotation(text, x, y);
        name.setFont(fonts.regular(NAME_SIZE));
        name.setPaint(Palette.TEXT);
        name.setTextAnchor(anchor);
        plot.addAnnotation(name);
    }

    /** A legend item drawn as a piece of the line. */
    public static LegendItem line(String label, Color colour, Stroke stroke) {
        return new LegendItem(label, null, null, null, new Line2D.Double(-17, 0, 17, 0), stroke, colour);
    }

    /** A legend item drawn as a box. */
    public static LegendItem box(String label, Color colour) {
        return new LegendItem(
                label, null, null, null, new Rectangle2D.Double(-8, -5, 16, 10), colour, Palette.THIN, Palette.FAINT);
    }

    /** A legend item drawn as a mark. */
    public static LegendItem mark(String label, Color colour, Shape shape) {
        return new LegendItem(label, null, null, null, shape, colour);
    }

    /** A legend item drawn as a mark that is white within. */
    public static LegendItem hollow(String label, Color colour, Shape shape) {
        return new LegendItem(label, null, null, null, shape, Color.WHITE, Palette.SOLID, colour);
    }

    /** A legend item drawn as the outline of a mark. */
    public static LegendItem ring(String label, Color colour, Shape shape) {
        return new LegendItem(label, null, null, null, shape, Color.WHITE, Palette.BOLD, colour);
    }
}
