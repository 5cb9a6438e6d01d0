package runthrough.chart.verdict;

import java.util.Comparator;
import java.util.List;
import runthrough.chart.ChartContext;
import runthrough.simulation.records.ChangeRecord;

/** The coil change worth a closer look: the one that cost most, or, where none cost anything, that came nearest to a stop; the first of equals. */
final class FeaturedChange {
    private FeaturedChange() {}

    static ChangeRecord of(ChartContext context, List<ChangeRecord> changes) {
        Comparator<ChangeRecord> order = context.stores()
                ? Comparator.comparingDouble((ChangeRecord change) -> -change.lostMetres())
                        .thenComparingDouble(ChangeRecord::lowestAboveStopLevel)
                : Comparator.comparingDouble(ChangeRecord::jointCycleTime).reversed();
        return changes.stream().min(order).orElseThrow(() -> new IllegalArgumentException("a chart of no coil change"));
    }

    /** Why {@code change} was chosen, in words. */
    static String why(ChartContext context, ChangeRecord change) {
        return !context.stores()
                ? "the longest"
                : change.lostMetres() > 0 ? "the costliest" : "the one closest to the stop level";
    }
}
