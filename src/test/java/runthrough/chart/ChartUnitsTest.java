package runthrough.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;

class ChartUnitsTest {

    @Test
    void axisBeyondNinetySeconds_isInMinutes() {
        assertThat(ChartUnits.clock(90)).isEqualTo(Unit.SECOND);
        assertThat(ChartUnits.clock(90.1)).isEqualTo(Unit.MINUTE);
        assertThat(ChartUnits.clock(3 * 3600 + 1)).isEqualTo(Unit.HOUR);
    }

    @Test
    void timeInASentence_followsTheRuleOfAllTexts() {
        ChartUnits units = ChartUnits.of(UnitSystem.METRIC);
        assertThat(units.time(80)).isEqualTo("80 s");
        assertThat(units.time(125)).isEqualTo("2:05 min");
    }
}
