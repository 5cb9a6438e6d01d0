package runthrough.chart.sensitivity;

import java.util.List;
import java.util.stream.Stream;
import runthrough.chart.Chart;
import runthrough.chart.ChartContext;
import runthrough.study.sensitivity.Sensitivity;

/** Sensitivity: a tornado for the margin and one for the share run through, then the shares of variance. */
public final class SensitivityCharts {
    private SensitivityCharts() {}

    /** The charts of {@code sensitivity}. */
    public static List<Chart> of(Sensitivity sensitivity) {
        ChartContext context = ChartContext.of(sensitivity.request());
        return Stream.concat(
                        TornadoChart.of(context, sensitivity.swings(), sensitivity.chance()).stream(),
                        VarianceChart.of(context, sensitivity.randomness()).stream())
                .toList();
    }
}
