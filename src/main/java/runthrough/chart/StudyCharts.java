package runthrough.chart;

import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.Brief;
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
                ? List.of(CapacityChart.of(setting(sizing.brief(), sizing.replications()), sizing))
                : List.of();
    }

    /** Output and share against process speed. */
    public static List<Chart> of(SpeedCurve curve) {
        return List.of(OutputChart.of(setting(curve.brief(), curve.brief().run().replications()), curve));
    }

    /** A log of the line against simulated ones. */
    public static List<Chart> of(LogComparison comparison) {
        return LogCharts.of(setting(comparison.brief(), comparison.simulatedLogs()), comparison);
    }

    /** Share run through over two numbers. */
    public static List<Chart> of(ShareMap map) {
        return List.of(MapChart.of(setting(map.brief(), map.brief().run().replications()), map));
    }

    /** How well share and capacity are known. */
    public static List<Chart> of(Uncertainty known) {
        return UncertaintyCharts.of(setting(known.brief(), known.brief().run().replications()), known);
    }

    /** What each alternative gives, and what it gains over the one called today. */
    public static List<Chart> of(Comparison comparison) {
        Setting setting = setting(comparison.today().alternative().brief(), comparison.replications());
        return List.of(AlternativesChart.of(setting, comparison), GainChart.of(setting, comparison));
    }

    /** What moves the answer: a tornado for the margin and one for the share run through, then the shares of variance. */
    public static List<Chart> of(Sensitivity sensitivity) {
        Setting setting = setting(sensitivity.brief(), sensitivity.brief().run().replications());
        return Stream.concat(
                        TornadoChart.of(setting, sensitivity.swings(), sensitivity.chance()).stream(),
                        VarianceChart.of(setting, sensitivity.randomness()).stream())
                .toList();
    }

    /** How far each number can be driven, as {@code rows} say; none where limits do not apply. */
    public static List<Chart> of(Limits limits, List<LimitRow> rows, String reading) {
        Setting setting = setting(limits.brief(), limits.brief().run().replications());
        return rows.isEmpty() ? List.of() : List.of(LimitsChart.of(setting, rows, reading));
    }

    private static Setting setting(Brief brief, int replications) {
        return Charts.setting(brief.line(), brief.resultsIn(), replications);
    }
}
