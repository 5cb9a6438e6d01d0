package runthrough.chart.sensitivity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import runthrough.chart.ChartStyle;
import runthrough.chart.Palette;
import runthrough.chart.sensitivity.BarRows.Half;

/** Rows of bars have an axis, whatever the bars are. */
class BarRowsTest {

    /** As of a source of randomness that carries nothing in a short run. */
    @Test
    void barsOfNothingHaveAnAxisTooAndAllWordsLieOnIt() {
        ChartStyle style = new ChartStyle();
        BarRows rows = new BarRows(style, List.of("joint", "reject"));
        rows.bar(0, Half.UPPER, 0, Palette.JOIN);
        rows.words(1, Half.MIDDLE, 0, false, "not significant");

        var axis = rows.plot("share, %").getDomainAxis().getRange();

        assertThat(axis.getLowerBound()).isZero();
        assertThat(axis.getUpperBound()).isGreaterThan(0);
    }
}
