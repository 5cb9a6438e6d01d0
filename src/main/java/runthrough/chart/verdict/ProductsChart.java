package runthrough.chart.verdict;

import java.awt.Color;
import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.chart.ChartStyle;
import runthrough.chart.ChartUnits;
import runthrough.chart.Palette;
import runthrough.quantity.Kind;
import runthrough.study.CoilOutcomes;
import runthrough.study.CoilOutcomes.Product;
import runthrough.study.cause.Cause;

/** Which products stop the line: for each the share of its coil changes that did not run through, by what it is attributed to. */
final class ProductsChart {
    private static final int MOST = 14;
    private static final double HALF_HEIGHT = 0.34;
    private static final int LONGEST_NAME = 44;
    private static final double MOST_SHARE = 100;
    /** A bar of 100 % and the number behind it. */
    private static final double ALL_WITH_ITS_NUMBER = 115;

    private static final String TITLE = "Coil changes that did not run through, by product";

    private final ChartContext context;
    private final List<Product> products;
    private final int all;

    private ProductsChart(ChartContext context, CoilOutcomes outcomes) {
        this.context = context;
        List<Product> every = outcomes.products();
        this.all = every.size();
        this.products = every.subList(0, Math.min(MOST, all));
    }

    /** The chart of coils of several kinds. */
    static Chart of(ChartContext context, CoilOutcomes outcomes) {
        return new ProductsChart(context, outcomes).chart();
    }

    private Chart chart() {
        SymbolAxis rows = context.style()
                .rows(products.stream().map(p -> shortened(name(p))).toList());
        NumberAxis share = context.style().axis("share of the product's coil changes, %");
        double most = products.stream().mapToDouble(p -> 100 * failed(p)).max().orElse(0);
        ChartStyle.reach(share, 0, upTo(most));
        if (share.getUpperBound() >= MOST_SHARE) {
            share.setTickUnit(new NumberTickUnit(20));
        }
        XYPlot plot = context.style().plot(share, rows);
        plot.setRangeGridlinesVisible(false);
        LegendItemCollection legend = new LegendItemCollection();
        bars(plot, legend);
        for (int row = 0; row < products.size(); row++) {
            Product product = products.get(row);
            context.style().name(plot, "  " + count(product), 100 * failed(product), row, TextAnchor.CENTER_LEFT);
        }
        String reading = reading();
        return new Chart(
                "products",
                TITLE,
                reading,
                "A bar for each product, parted by what its failures are attributed to. " + reading,
                context.style().picture(TITLE, plot, legend, 130 + 30 * products.size()));
    }

    /** With room for the numbers behind the bars; what comes near to all ends there. */
    static double upTo(double most) {
        double withNumbers = 1.28 * most;
        return withNumbers > MOST_SHARE
                ? ALL_WITH_ITS_NUMBER
                : withNumbers > MOST_SHARE / 2 ? MOST_SHARE : Math.max(1, withNumbers);
    }

    private void bars(XYPlot plot, LegendItemCollection legend) {
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setUseYInterval(true);
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(true);
        double[] reached = new double[products.size()];
        for (Cause cause : Cause.values()) {
            XYIntervalSeries series = new XYIntervalSeries(cause, false, true);
            for (int row = 0; row < products.size(); row++) {
                double length = 100.0
                        * products.get(row).tally().causes().count(cause)
                        / products.get(row).tally().changes();
                if (length > 0) {
                    double from = reached[row];
                    reached[row] += length;
                    series.add(from, from, from + length, row, row - HALF_HEIGHT, row + HALF_HEIGHT);
                }
            }
            if (!series.isEmpty()) {
                renderer.setSeriesPaint(data.getSeriesCount(), colour(cause));
                renderer.setSeriesOutlinePaint(data.getSeriesCount(), Palette.EDGE);
                renderer.setSeriesOutlineStroke(data.getSeriesCount(), Palette.HAIR);
                data.addSeries(series);
                legend.add(ChartStyle.box(cause.words(), colour(cause)));
            }
        }
        plot.setDataset(data);
        plot.setRenderer(renderer);
    }

    private static Color colour(Cause cause) {
        return switch (cause) {
            case PRACTICE, NOT_THE_JOINT -> Palette.OTHER;
            case WAITING_FOR_PREPARATION -> Palette.SLOWED;
            case WAITING_FOR_PEOPLE -> Palette.TAIL;
            case BOTH_WAITS -> Palette.PROCESS;
            case ACCUMULATOR_NOT_FULL -> Palette.PREPARE;
            case JOINT_MADE_AGAIN -> Palette.JOIN;
            case OCCASIONAL_ELEMENT -> Palette.SECONDARY;
            case ELEMENT_TOOK_LONG -> Palette.SHORT;
            case SEVERAL_TOGETHER -> Palette.ENTRY;
            case USUAL_JOINT_TOO_LONG -> Palette.LEVEL;
        };
    }

    private String reading() {
        long failing = products.stream().filter(p -> p.tally().failed() > 0).count();
        if (failing == 0) {
            return "All coil changes of all " + all + " products ran through.";
        }
        Product first = products.get(0);
        return "Most failures come with " + name(first) + ": " + first.tally().failed() + " of its "
                + first.tally().changes() + " coil changes did not run through"
                + (all > MOST ? "; the " + MOST + " products with most failures of " + all + " are shown." : ".");
    }

    private static double failed(Product product) {
        return (double) product.tally().failed() / product.tally().changes();
    }

    private static String count(Product product) {
        return product.tally().failed() + " of " + product.tally().changes();
    }

    private String name(Product product) {
        CoilOutcomes.Name name = product.name();
        return name.given().isEmpty()
                ? section(Kind.THICKNESS, name.thickness()) + " x " + section(Kind.WIDTH, name.width())
                : name.given();
    }

    private String section(Kind kind, double si) {
        return ChartUnits.text(si, context.units().units().unit(kind));
    }

    private static String shortened(String name) {
        return name.codePointCount(0, name.length()) <= LONGEST_NAME
                ? name
                : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME - 1)) + "…";
    }
}
