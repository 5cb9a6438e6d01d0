package runthrough.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A chart has axes, whatever is drawn in it. */
class ChartStyleTest {

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, 7, -7, 1e18})
    void anAxisOfOneValueGoesOnBeyondIt(double value) {
        NumberAxis axis = new NumberAxis("value");

        ChartStyle.reach(axis, value, value);

        assertThat(axis.getRange().contains(value)).isTrue();
        assertThat(axis.getRange().getLength()).isGreaterThan(0);
    }

    /** A line that loses no time has a curve of zeros, and one that costs and brings nothing too. */
    @ParameterizedTest
    @ValueSource(doubles = {0, -Double.MAX_VALUE})
    void aCurveOfZerosIsDrawn(double floor) {
        CurvePlot plot = new CurvePlot(new ChartStyle(), new LegendItemCollection(), null, "lost in a year, h");
        plot.further("lost", new double[] {10, 20}, new double[] {0, -0.0}, Palette.PROCESS, Palette.DASHES);

        assertThat(plot.within(floor, Double.MAX_VALUE)
                        .getRangeAxis()
                        .getRange()
                        .getLength())
                .isGreaterThan(0);
    }

    @Test
    void otherwiseItEndsWhereItIsSaidTo() {
        NumberAxis axis = new NumberAxis("value");

        ChartStyle.reach(axis, 2, 3);

        assertThat(axis.getLowerBound()).isEqualTo(2);
        assertThat(axis.getUpperBound()).isEqualTo(3);
    }
}
