package runthrough.chart;

import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.SimulationRequest;
import runthrough.study.comparison.Comparison;
import runthrough.study.limits.Limits;
import runthrough.study.logged.LogComparison;
import runthrough.study.map.ShareMap;
import runthrough.study.sensitivity.Sensitivity;
import runthrough.study.sizing.Sizing;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.uncertainty.Uncertainty;

/** The charts of the studies that go beyond one verdict. */
public final class StudyCharts {
    private StudyCharts() {}

    /** Share against capacity; none where no capacity was found. */
    public static List<Chart> of(Sizing sizing) {
        return sizing.answer() == Sizing.Answer.FOUND
                ? List.of(CapacityChart.of(setting(sizing.request(), sizing.replications()), sizing))
                : List.of();
    }

    /** Output and share against process speed. */
    public static List<Chart> of(SpeedCurve curve) {
        return List.of(
                OutputChart.of(setting(curve.request(), curve.request().run().replications()), curve));
    }

    /** A log of the line against simulated ones. */
    public static List<Chart> of(LogComparison comparison) {
        return LogCharts.of(setting(comparison.request(), comparison.simulatedLogs()), comparison);
    }

    /** Share run through over two numbers. */
    public static List<Chart> of(ShareMap map) {
        return List.of(MapChart.of(setting(map.request(), map.request().run().replications()), map));
    }

    /** How well share and capacity are known. */
    public static List<Chart> of(Uncertainty known) {
        return UncertaintyCharts.of(
                setting(known.request(), known.request().run().replications()), known);
    }

    /** What each alternative gives, and what it gains over the one called today. */
    public static List<Chart> of(Comparison comparison) {
        ChartContext setting = setting(comparison.today().alternative().request(), comparison.replications());
        return List.of(AlternativesChart.of(setting, comparison), GainChart.of(setting, comparison));
    }

    /** What moves the answer: a tornado for the margin and one for the share run through, then the shares of variance. */
    public static List<Chart> of(Sensitivity sensitivity) {
        ChartContext setting =
                setting(sensitivity.request(), sensitivity.request().run().replications());
        return Stream.concat(
                        TornadoChart.of(setting, sensitivity.swings(), sensitivity.chance()).stream(),
                        VarianceChart.of(setting, sensitivity.randomness()).stream())
                .toList();
    }

    /** How far each number can be driven, as {@code rows} say; none where limits do not apply. */
    public static List<Chart> of(Limits limits, List<LimitRow> rows, String reading) {
        ChartContext setting = setting(limits.request(), limits.request().run().replications());
        return rows.isEmpty() ? List.of() : List.of(LimitsChart.of(setting, rows, reading));
    }

    private static ChartContext setting(SimulationRequest request, int replications) {
        return Charts.setting(request.line(), request.resultsIn(), replications);
    }
}
