package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SampleTest {

    @Test
    void percentileInterpolatesBetweenOrderStatistics() {
        // Rule REPORT-15.
        Sample sample = Sample.of(40, 10, 30, 20);

        // h = (4 - 1) p: p = 0.5 -> 1.5, between 20 and 30; p = 0.9 -> 2.7, 30 + 0.7 * 10.
        assertThat(sample.percentile(0)).isEqualTo(10);
        assertThat(sample.percentile(0.5)).isEqualTo(25);
        assertThat(sample.percentile(0.9)).isCloseTo(37, within(1e-12));
        assertThat(sample.percentile(1)).isEqualTo(40);
    }

    @Test
    void percentileOnAnOrderStatisticIsThatValue() {
        assertThat(Sample.of(1, 2, 4, 8, 16).percentile(0.75)).isEqualTo(8);
    }

    @Test
    void everyPercentileOfOneValueIsThatValue() {
        assertThat(Sample.of(3.5).percentile(0)).isEqualTo(3.5);
        assertThat(Sample.of(3.5).percentile(0.3)).isEqualTo(3.5);
        assertThat(Sample.of(3.5).percentile(1)).isEqualTo(3.5);
    }

    @Test
    void percentileOutsideOfZeroToOneIsRefused() {
        assertThatThrownBy(() -> Sample.of(1).percentile(1.01)).hasMessage("percentile at 1.01; must be from 0 to 1");
        assertThatThrownBy(() -> Sample.of(1).percentile(Double.NaN)).hasMessageContaining("NaN");
    }

    @Test
    void aValueThatIsNotANumberIsRefused() {
        assertThatThrownBy(() -> Sample.of(1, Double.NaN, 2)).hasMessageContaining("not a number in a sample of 3");
    }

    @Test
    void shareBelowLeavesOutValuesOnTheLimit() {
        Sample sample = Sample.of(-1, 0, 0, 2);

        assertThat(sample.shareBelow(0)).isEqualTo(0.25);
        assertThat(sample.shareBelow(0.1)).isEqualTo(0.75);
        assertThat(sample.shareBelow(-5)).isZero();
        assertThat(sample.shareBelow(3)).isEqualTo(1);
    }

    @Test
    void itsValuesCannotBeChangedFromOutside() {
        double[] given = {2, 1};
        Sample sample = Sample.of(given);
        given[0] = 99;
        sample.values()[0] = 99;

        assertThat(sample.values()).containsExactly(1, 2);
        assertThat(sample.get(1)).isEqualTo(2);
    }

    @Test
    void summaryOfZeroToTwoHundred_percentilesAreReadOffTheScale() {
        double[] values = new double[201];
        for (int i = 0; i < values.length; i++) {
            values[i] = i;
        }
        Summary summary = Sample.of(values)
                .summary(Estimators.mean(100), Moments.of(values).sd());

        // h = 200 p is a whole number for every share of the summary.
        assertThat(new double[] {
                    summary.least(), summary.p005(), summary.p01(), summary.p05(), summary.p50(),
                    summary.p90(), summary.p95(), summary.p99(), summary.p995(), summary.greatest()
                })
                .usingComparatorWithPrecision(1e-9)
                .containsExactly(0, 1, 2, 10, 100, 180, 190, 198, 199, 200);
        assertThat(summary.count()).isEqualTo(201);
        // Variance of 0..n-1 with divisor n - 1: n (n + 1) / 12 = 201 * 202 / 12 = 3383.5
        assertThat(summary.sd()).isCloseTo(Math.sqrt(3383.5), within(1e-9));
    }
}
