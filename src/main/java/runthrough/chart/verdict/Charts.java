package runthrough.chart.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.handcalc.ClosedForms;
import runthrough.handcalc.SlowingForms;
import runthrough.plant.Line;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.StudyResult;

/** All charts of a study, in the order in which they tell its story. */
public final class Charts {
    private Charts() {}

    /**
     * The charts that {@code result} has the data for: those over time need the first replication's trace and work, those of
     * strip an accumulator.
     */
    public static List<Chart> of(StudyResult result) {
        ChartContext context = ChartContext.of(result.request(), result.totals().size());
        List<Chart> charts = new ArrayList<>();
        Replication first = result.first();
        List<ChangeRecord> changes = first.changes();
        Replication traced = traced(first);
        if (context.stores() && !result.verdict().namedCauses().isEmpty()) {
            charts.add(CausesChart.of(context, result.verdict().namedCauses()));
        }
        if (!traced.changes().isEmpty()) {
            charts.add(LevelChart.of(context, traced));
            charts.add(CloseUpChart.of(context, traced));
        }
        charts.add(JointCycleTimeChart.of(context, result.pooled().jointCycleTime(), longestJoint(context)));
        result.pooled()
                .margin()
                .ifPresent(margins -> charts.add(
                        MarginChart.of(context, margins, result.verdict().changes())));
        if (context.stores() && !changes.isEmpty()) {
            charts.add(DrawnChart.of(context, changes));
            charts.add(RunChart.of(context, changes));
        }
        if (result.coils().areSeveral()) {
            charts.add(ProductsChart.of(context, result.coils()));
        }
        return List.copyOf(charts);
    }

    /** The coil changes that the trace reaches to: of a long replication only the beginning is traced. */
    private static Replication traced(Replication whole) {
        double end = whole.trace()
                .map(trace -> trace.points().get(trace.points().size() - 1).time())
                .orElse(Double.NEGATIVE_INFINITY);
        List<ChangeRecord> within = whole.changes().stream()
                .filter(change -> change.released() <= end)
                .toList();
        return new Replication(whole.index(), whole.totals(), within, whole.work(), whole.trace());
    }

    /**
     * The longest joint cycle time (s) that a full accumulator bears, without slowing where the process can slow, by the hand calculation; with coils of different speeds the
     * shortest of theirs.
     */
    private static OptionalDouble longestJoint(ChartContext context) {
        return context.stores()
                ? context.line().coils().stream()
                        .mapToDouble(coil -> longestJoint(context.line(), ClosedForms.of(context.line(), coil)))
                        .min()
                : OptionalDouble.empty();
    }

    private static double longestJoint(Line line, ClosedForms forms) {
        return line.process()
                .slowing()
                .map(slowing -> SlowingForms.of(forms, slowing).atRatedSpeed())
                .orElse(forms)
                .longestJoint();
    }
}
