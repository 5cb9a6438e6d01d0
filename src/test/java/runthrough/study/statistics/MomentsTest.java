package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Certified values: National Institute of Standards and Technology, Statistical Reference Datasets (StRD), Univariate Summary
 * Statistics. Tolerances of the standard deviation grow with mean over spread, because 0.1 has no exact double.
 */
class MomentsTest {

    @Test
    void nistNumAcc1_meanAndSpread() {
        Moments moments = Moments.of(10000001, 10000003, 10000002);

        assertThat(moments.mean()).isEqualTo(10000002);
        assertThat(moments.sd()).isCloseTo(1, withinPercentage(1e-10));
    }

    @Test
    void nistNumAcc2_meanAndSpread() {
        Moments moments = Moments.of(alternating(1.2, 1.1, 1.3));

        assertThat(moments.mean()).isCloseTo(1.2, withinPercentage(1e-11));
        assertThat(moments.sd()).isCloseTo(0.1, withinPercentage(1e-10));
    }

    @Test
    void nistNumAcc3_spreadAMillionthOfTheMean() {
        Moments moments = Moments.of(alternating(1000000.2, 1000000.1, 1000000.3));

        assertThat(moments.mean()).isCloseTo(1000000.2, withinPercentage(1e-11));
        assertThat(moments.sd()).isCloseTo(0.1, withinPercentage(1e-6));
    }

    @Test
    void nistNumAcc4_spreadAHundredMillionthOfTheMean() {
        Moments moments = Moments.of(alternating(10000000.2, 10000000.1, 10000000.3));

        assertThat(moments.mean()).isCloseTo(10000000.2, withinPercentage(1e-11));
        assertThat(moments.sd()).isCloseTo(0.1, withinPercentage(1e-5));
    }

    @Test
    void nistMavro_meanAndSpread() {
        // Filter transmittance, in units of 1e-4 above 2.
        int[] data = {
            18, 17, 18, 19, 18, 17, 15, 14, 15, 15, 17, 18, 18, 19, 19, 21, 20, 16, 14, 13, 13, 15, 15, 16, 15, 14, 13,
            14, 15, 14, 15, 16, 15, 16, 19, 20, 20, 21, 22, 23, 24, 25, 27, 26, 26, 26, 27, 26, 25, 24
        };
        Moments moments = Moments.of(
                IntStream.of(data).mapToDouble(i -> (20000 + i) / 10000.0).toArray());

        assertThat(moments.n()).isEqualTo(50);
        assertThat(moments.mean()).isCloseTo(2.00185600000000, withinPercentage(1e-11));
        assertThat(moments.sd()).isCloseTo(0.000429123454003053, withinPercentage(1e-9));
    }

    @Test
    void aSingleValueHasNoSpread() {
        Moments moments = Moments.of(7);

        assertThat(moments.mean()).isEqualTo(7);
        assertThat(moments.sd()).isNaN();
        assertThat(moments.sdOrZero()).isZero();
    }

    @Test
    void noValuesHaveNoMean() {
        assertThatThrownBy(Moments::of)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no values");
    }

    /** {@code first}, then {@code odd} and {@code even} 500 times. */
    private static double[] alternating(double first, double odd, double even) {
        return DoubleStream.concat(
                        DoubleStream.of(first), IntStream.range(0, 1000).mapToDouble(i -> i % 2 == 0 ? odd : even))
                .toArray();
    }
}
