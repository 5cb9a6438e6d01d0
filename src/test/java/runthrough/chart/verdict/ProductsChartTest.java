package runthrough.chart.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ProductsChartTest {

    @Test
    void axisEndsAtAllWhereAProductFailsMostly_withRoomForTheNumberBehindAFullBar() {
        // 1.28 times the longest bar has room for its number: 74 % would end at 94.7.
        assertThat(ProductsChart.upTo(74)).isEqualTo(100);
        assertThat(ProductsChart.upTo(45)).isEqualTo(100);
        assertThat(ProductsChart.upTo(90)).isEqualTo(115);
        assertThat(ProductsChart.upTo(10)).isEqualTo(12.8);
        assertThat(ProductsChart.upTo(0)).isEqualTo(1);
    }
}
