package runthrough.chart.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import runthrough.chart.Chart;

/** The charts of how far the program is from outside values. */
class ErrorChartTest {

    private static Chart errors(double tolerance, Double... errors) {
        return ErrorChart.of("errors", "Level", "random line", tolerance, List.of(errors));
    }

    /** Heights of all bars that are there, each at the middle of its bin. */
    private static List<String> bars(Chart chart) {
        XYDataset data = ((XYPlot) chart.picture().chart().getPlot()).getDataset(0);
        return IntStream.range(0, data.getSeriesCount())
                .filter(series -> data.getItemCount(series) > 0)
                .mapToObj(series -> data.getXValue(series, 0) + ": " + data.getYValue(series, 0))
                .toList();
    }

    @Test
    void errorsAreCountedByPowersOfTen_noneApart() {
        // Bins: none, then below 1e-13, 1e-12, 1e-11, 1e-10, 1e-9. A power of ten itself belongs below it.
        Chart chart = errors(1e-9, 0.0, 3e-13, 1e-12, 5e-10);

        assertThat(bars(chart)).containsExactly("0.0: 25.0", "2.0: 50.0", "5.0: 25.0");
        assertThat(chart.reading())
                .isEqualTo(
                        "One difference for each random line, 4 of them: 1 are none, the greatest is below 1e-9; allowed "
                                + "is 1e-9.");
    }

    @Test
    void readingFitsWhenAllOrNoneDiffer() {
        assertThat(errors(1e-9, 0.0, 0.0).reading()).contains("2 of them: all are none; allowed");
        assertThat(errors(1e-6, 2e-8, 3e-9).reading())
                .contains("2 of them: the greatest is below 1e-7; allowed is 1e-6");
    }

    @Test
    void whatIsBeyondTheLimitIsShownBeyondIt() {
        Chart chart = errors(2.5e-8, 1e-9, 4e-6);

        assertThat(bars(chart)).hasSize(2);
        assertThat(chart.reading()).contains("the greatest is below 1e-5; allowed is 2.5e-8");
        assertThat(chart.svg()).contains("allowed: 2.5e-8");
    }

    @Test
    void deviationsOfANormalDistributionAreReadAsSuch() {
        Random random = new Random(5);
        List<Double> deviations =
                DoubleStream.generate(random::nextGaussian).limit(1000).boxed().toList();
        long one = deviations.stream().filter(d -> Math.abs(d) <= 1).count();
        Chart chart = DeviationChart.of("deviations", deviations);

        assertThat(one).isBetween(640L, 720L);
        assertThat(chart.reading()).startsWith(one + " of 1000 sampled values lie within one standard error");
        assertThat(bars(chart)).hasSizeGreaterThan(10);
    }

    @Test
    void deviationsFarOutStandAtTheEdge() {
        assertThat(bars(DeviationChart.of("deviations", List.of(-9.0, 0.1, 0.2, 9.0))))
                .containsExactly("-3.75: 25.0", "0.25: 50.0", "3.75: 25.0");
    }

    @Test
    void sameErrorsGiveTheSameBytes() {
        assertThat(errors(1e-9, 1e-12).svg()).isEqualTo(errors(1e-9, 1e-12).svg());
        assertThat(DeviationChart.of("d", Collections.nCopies(3, 0.5)).svg())
                .isEqualTo(DeviationChart.of("d", Collections.nCopies(3, 0.5)).svg());
    }
}
