package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static runthrough.report.validation.Topic.STATISTICS;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;

/**
 * Certified values: National Institute of Standards and Technology, Statistical Reference Datasets (StRD), Univariate Summary
 * Statistics. Tolerances of the standard deviation grow with mean over spread, because 0.1 has no exact double.
 */
@RecordsChecks
class MomentsTest {
    private static void check(
            CheckBook book,
            String id,
            String set,
            Moments moments,
            double mean,
            double meanTolerance,
            double sd,
            double sdTolerance) {
        book.check(STATISTICS, id, set + ", mean")
                .source(Sources.NIST_STRD)
                .expected(mean)
                .relative(meanTolerance)
                .got(moments.mean());
        book.check(STATISTICS, id, set + ", standard deviation")
                .source(Sources.NIST_STRD)
                .expected(sd)
                .relative(sdTolerance)
                .got(moments.sd());
    }

    @Test
    void nistNumAcc1_meanAndSpread(CheckBook book) {
        Moments moments = Moments.of(10000001, 10000003, 10000002);

        check(book, "S1", "NumAcc1", moments, 10000002, 0, 1, 1e-12);
    }

    @Test
    void nistNumAcc2_meanAndSpread(CheckBook book) {
        Moments moments = Moments.of(alternating(1.2, 1.1, 1.3));

        check(book, "S2", "NumAcc2", moments, 1.2, 1e-13, 0.1, 1e-12);
    }

    @Test
    void nistNumAcc3_spreadAMillionthOfTheMean(CheckBook book) {
        Moments moments = Moments.of(alternating(1000000.2, 1000000.1, 1000000.3));

        check(book, "S3", "NumAcc3", moments, 1000000.2, 1e-13, 0.1, 1e-8);
    }

    @Test
    void nistNumAcc4_spreadAHundredMillionthOfTheMean(CheckBook book) {
        Moments moments = Moments.of(alternating(10000000.2, 10000000.1, 10000000.3));

        check(book, "S4", "NumAcc4", moments, 10000000.2, 1e-13, 0.1, 1e-7);
    }

    @Test
    void nistMavro_meanAndSpread(CheckBook book) {
        // Filter transmittance, in units of 1e-4 above 2.
        int[] data = {
            18, 17, 18, 19, 18, 17, 15, 14, 15, 15, 17, 18, 18, 19, 19, 21, 20, 16, 14, 13, 13, 15, 15, 16, 15, 14, 13,
            14, 15, 14, 15, 16, 15, 16, 19, 20, 20, 21, 22, 23, 24, 25, 27, 26, 26, 26, 27, 26, 25, 24
        };
        Moments moments = Moments.of(
                IntStream.of(data).mapToDouble(i -> (20000 + i) / 10000.0).toArray());

        assertThat(moments.n()).isEqualTo(50);
        check(book, "S5", "Mavro", moments, 2.00185600000000, 1e-13, 0.000429123454003053, 1e-11);
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
