package runthrough.chart;

import java.util.List;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.CombinedRangeXYPlot;

/** Panels side by side that share their rows, the first row at the top. */
public final class RowChart {
    private static final int ROW = 44;
    private static final int REST = 150;

    private RowChart() {}

    public static Picture picture(
            ChartStyle style, String title, List<String> rows, List<RowPlot> panels, LegendItemCollection legend) {
        SymbolAxis names = new SymbolAxis("", rows.toArray(String[]::new));
        names.setGridBandsVisible(false);
        style.styled(names);
        names.setInverted(true);
        names.setRange(-0.7, rows.size() - 0.4);
        CombinedRangeXYPlot all = new CombinedRangeXYPlot(names);
        all.setGap(14);
        panels.forEach(panel -> {
            panel.plot().setRangeGridlinesVisible(false);
            all.add(panel.plot(), 1);
        });
        return style.picture(title, all, legend, ROW * rows.size() + REST);
    }
}
