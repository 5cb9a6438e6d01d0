package runthrough.chart.comparison;

import java.util.List;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.study.comparison.Comparison;

/** What each alternative gives, and what it gains over the one called today. */
public final class ComparisonCharts {
    private ComparisonCharts() {}

    /** The charts of {@code comparison}. */
    public static List<Chart> of(Comparison comparison) {
        ChartContext context = ChartContext.of(comparison.today().alternative().request(), comparison.replications());
        return List.of(AlternativesChart.of(context, comparison), GainChart.of(context, comparison));
    }
}
