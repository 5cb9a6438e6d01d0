package runthrough.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.RANDOM_NUMBERS;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.ExponentialDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;
import org.apache.commons.statistics.distribution.UniformContinuousDistribution;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;

/** The distributions of random quantities, against Apache Commons Statistics, which has them by other ways. */
@RecordsChecks
class DistributionTest {

    private static final double[] SHARES = {
        1e-9, 1e-6, 1e-3, 0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99, 0.999, 1 - 1e-6, 1 - 1e-9
    };

    static Stream<Arguments> distributions() {
        return Stream.of(
                Arguments.of(Distribution.uniform(5, 9), UniformContinuousDistribution.of(5, 9)),
                Arguments.of(Distribution.triangular(60, 90, 240), TriangularDistribution.of(60, 90, 240)),
                Arguments.of(Distribution.triangular(60, 60, 240), TriangularDistribution.of(60, 60, 240)),
                Arguments.of(Distribution.triangular(60, 240, 240), TriangularDistribution.of(60, 240, 240)),
                Arguments.of(Distribution.normal(10, 3), truncated(10, 3)),
                Arguments.of(Distribution.normal(1, 2), truncated(1, 2)),
                Arguments.of(Distribution.normal(0.1, 5), truncated(0.1, 5)),
                Arguments.of(Distribution.normal(100, 1), truncated(100, 1)),
                Arguments.of(Distribution.lognormal(120, 30), lognormal(120, 30)),
                Arguments.of(Distribution.lognormal(2, 5), lognormal(2, 5)),
                Arguments.of(Distribution.gamma(120, 60), gamma(120, 60)),
                Arguments.of(Distribution.gamma(1, 3), gamma(1, 3)),
                Arguments.of(Distribution.gamma(50, 50), gamma(50, 50)),
                Arguments.of(Distribution.gamma(200, 5), gamma(200, 5)),
                Arguments.of(Distribution.weibull(1.72, 606.5), WeibullDistribution.of(1.72, 606.5)),
                Arguments.of(Distribution.weibull(0.7, 30), WeibullDistribution.of(0.7, 30)),
                Arguments.of(Distribution.exponential(3600), ExponentialDistribution.of(3600)));
    }

    private static ContinuousDistribution truncated(double mean, double sd) {
        return TruncatedNormalDistribution.of(mean, sd, 0, Double.POSITIVE_INFINITY);
    }

    private static ContinuousDistribution lognormal(double mean, double sd) {
        double variance = Math.log1p(sd / mean * (sd / mean));
        return LogNormalDistribution.of(Math.log(mean) - variance / 2, Math.sqrt(variance));
    }

    private static ContinuousDistribution gamma(double mean, double sd) {
        return GammaDistribution.of(mean * mean / (sd * sd), sd * sd / mean);
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void meanAndSpread_areThoseOfTheOracle(Distribution distribution, ContinuousDistribution oracle) {
        // Rules DIST-2, DIST-3, DIST-4, DIST-5, DIST-6, DIST-7, DIST-8, DIST-12.
        assertThat(distribution.mean()).isCloseTo(oracle.getMean(), within(1e-10 * oracle.getMean()));
        assertThat(distribution.sd()).isCloseTo(Math.sqrt(oracle.getVariance()), within(1e-8 * distribution.sd()));
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void quantiles_areWhereTheOracleHasTheirShare(Distribution distribution, ContinuousDistribution oracle) {
        // Rules DIST-12, RANDOM-1.
        // The share is compared, on the side where it is small: a quantile may be ill conditioned, its share is not.
        // Near an
        // end that is not zero the quantile itself is rounded, by a few parts in 1e16.
        for (double p : SHARES) {
            double value = distribution.quantile(p);
            double share = p < 0.5 ? oracle.cumulativeProbability(value) : oracle.survivalProbability(value);
            double wanted = p < 0.5 ? p : 1 - p;
            assertThat(share).as("share of %s at %s", distribution, p).isCloseTo(wanted, within(1e-8 * wanted + 1e-15));
        }
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void densityAndDistributionFunction_areThoseOfTheOracle(Distribution distribution, ContinuousDistribution oracle) {
        // Rule DIST-12.
        for (Distribution same : List.of(
                distribution,
                distribution.scaled(0.5).scaled(2),
                distribution.shifted(3).shifted(-3))) {
            for (double p : new double[] {1e-6, 1e-3, 0.1, 0.25, 0.5, 0.75, 0.9, 0.999, 1 - 1e-6}) {
                // An exact multiple of 2^-20, so that shifting it by 3 and back loses nothing.
                double value = Math.rint(oracle.inverseCumulativeProbability(p) * 0x1p20) / 0x1p20;
                double below = oracle.cumulativeProbability(value);
                double beyond = oracle.survivalProbability(value);
                assertThat(same.cumulative(value)).isCloseTo(below, within(1e-9 * below + 1e-14));
                assertThat(same.survival(value)).isCloseTo(beyond, within(1e-9 * beyond + 1e-14));
                if (value > oracle.getSupportLowerBound()) {
                    double density = oracle.density(value);
                    assertThat(same.density(value)).isCloseTo(density, within(1e-9 * density));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void outsideTheEnds_nothingIsDrawn(Distribution distribution) {
        double below = distribution.lowest() - 1;
        assertThat(List.of(distribution.cumulative(below), distribution.density(below)))
                .containsOnly(0.0);
        assertThat(distribution.survival(below)).isEqualTo(1);
        if (Double.isFinite(distribution.highest())) {
            double beyond = distribution.highest() + 1;
            assertThat(List.of(distribution.survival(beyond), distribution.density(beyond)))
                    .containsOnly(0.0);
            assertThat(distribution.cumulative(beyond)).isEqualTo(1);
            assertThat(distribution.cumulative(distribution.highest())).isEqualTo(1);
        }
    }

    @Test
    void valuesWithAShareOfTheirOwn_haveStepsAndNoDensity() {
        // Rules DIST-1, DIST-9. Of 2, 4, 4 and 10 three are 4 or less.
        Distribution observed = Distribution.observed(List.of(4.0, 10.0, 2.0, 4.0));
        assertThat(observed.cumulative(1.9)).isZero();
        assertThat(observed.cumulative(4)).isEqualTo(0.75);
        assertThat(observed.survival(4)).isEqualTo(0.25);
        assertThat(observed.cumulative(10)).isEqualTo(1);
        assertThat(Distribution.constant(7).cumulative(6.9)).isZero();
        assertThat(Distribution.constant(7).cumulative(7)).isEqualTo(1);
        assertThat(Distribution.uniform(5, 5).cumulative(5)).isEqualTo(1);
        assertThat(Distribution.triangular(5, 5, 5).survival(4)).isEqualTo(1);
        assertThatThrownBy(() -> observed.density(4))
                .isInstanceOf(UnsupportedOperationException.class)
                .hasMessage("a list of observed values has no density; its distribution function has steps");
        for (Distribution constant :
                List.of(Distribution.constant(7), Distribution.uniform(5, 5), Distribution.triangular(5, 5, 5))) {
            assertThatThrownBy(() -> constant.density(5)).hasMessageStartingWith("a constant has no density");
        }
    }

    /** The same over all distributions at once, for the record. */
    @Test
    void errorsOfAllDistributionsAgainstTheOracle(CheckBook book) {
        List<Double> means = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        distributions().map(Arguments::get).forEach(pair -> {
            Distribution distribution = (Distribution) pair[0];
            ContinuousDistribution oracle = (ContinuousDistribution) pair[1];
            means.add(Math.abs(distribution.mean() / oracle.getMean() - 1));
            for (double p : SHARES) {
                double value = distribution.quantile(p);
                double share = p < 0.5 ? oracle.cumulativeProbability(value) : oracle.survivalProbability(value);
                double wanted = p < 0.5 ? p : 1 - p;
                // Beside 1e-8 of the share, 1e-15: what rounding the quantile does to it near an end that is not zero.
                shares.add(Math.abs(share - wanted) / (wanted + 1e-7));
            }
        });
        book.check(RANDOM_NUMBERS, "D1", "means of the distributions of random times")
                .source(Sources.COMMONS_STATISTICS)
                .within(1e-10, "1e-10 of the value")
                .errors("distribution", means);
        book.check(
                        RANDOM_NUMBERS,
                        "D2",
                        "share of each distribution below, or above, its own quantile, from 1e-9 to 1 - 1e-9")
                .source(Sources.COMMONS_STATISTICS)
                .within(1e-8, "1e-8 of the share and 1e-7")
                .errors("quantile", shares);
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void quantiles_neverFallAndStayBetweenTheirEnds(Distribution distribution) {
        double before = distribution.lowest();
        for (int i = 1; i < 4000; i++) {
            double value = distribution.quantile(i / 4000.0);
            assertThat(value).isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(distribution.highest());
            before = value;
        }
        assertThat(distribution.quantile(Distribution.LEAST_DRAW))
                .isGreaterThanOrEqualTo(distribution.lowest())
                .isFinite();
        assertThat(distribution.quantile(1 - Distribution.LEAST_DRAW))
                .isLessThanOrEqualTo(distribution.highest())
                .isFinite();
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void ends_areThoseOfTheOracle(Distribution distribution, ContinuousDistribution oracle) {
        assertThat(distribution.lowest()).isEqualTo(oracle.getSupportLowerBound());
        assertThat(distribution.highest()).isEqualTo(oracle.getSupportUpperBound());
        assertThat(distribution.isConstant()).isFalse();
    }

    @Test
    void meanOfTheQuantiles_isTheMean() {
        // Midpoint rule over p: the mean of any distribution is the integral of its quantiles.
        distributions().map(arguments -> (Distribution) arguments.get()[0]).forEach(distribution -> {
            int n = 20_000;
            double sum = 0;
            for (int i = 0; i < n; i++) {
                sum += distribution.quantile((i + 0.5) / n);
            }
            assertThat(sum / n)
                    .as("mean of %s", distribution)
                    .isCloseTo(distribution.mean(), within(2e-3 * distribution.mean()));
        });
    }

    @Test
    void normalConditionedOnPositive_hasALargerMeanThanItsParent() {
        // Rule DIST-4.
        // Hazard of the standard normal at -1: 0.24197/0.84134 = 0.2876, so 2 + 2 * 0.2876 = 2.5752.
        assertThat(Distribution.normal(2, 2).mean()).isCloseTo(2.5752, within(1e-4));
    }

    @Test
    void constant_isItselfAtEveryShare() {
        // Rule DIST-1.
        Distribution constant = Distribution.constant(7);
        assertThat(List.of(
                        constant.quantile(0.01),
                        constant.quantile(0.99),
                        constant.mean(),
                        constant.lowest(),
                        constant.highest()))
                .containsOnly(7.0);
        assertThat(constant.sd()).isZero();
        assertThat(constant.isConstant()).isTrue();
    }

    @Test
    void spreadOfZero_actsAsConstant() {
        // Rule DIST-11.
        assertThat(Distribution.normal(5, 0)).isEqualTo(Distribution.constant(5));
        assertThat(Distribution.lognormal(5, 0)).isEqualTo(Distribution.constant(5));
        assertThat(Distribution.gamma(5, 0)).isEqualTo(Distribution.constant(5));
        assertThat(Distribution.uniform(5, 5).isConstant()).isTrue();
        assertThat(Distribution.uniform(5, 5).quantile(0.3)).isEqualTo(5);
        assertThat(Distribution.triangular(5, 5, 5).quantile(0.3)).isEqualTo(5);
    }

    @Test
    void observedValues_areDrawnEachWithItsShare() {
        // Rule DIST-9.
        // Mean (2 + 4 + 4 + 10)/4 = 5, squares 9 + 1 + 1 + 25 = 36, over all four: sqrt(36/4) = 3.
        Distribution observed = Distribution.observed(List.of(4.0, 10.0, 2.0, 4.0));
        assertThat(observed.mean()).isEqualTo(5);
        assertThat(observed.sd()).isEqualTo(3);
        assertThat(observed.lowest()).isEqualTo(2);
        assertThat(observed.highest()).isEqualTo(10);
        assertThat(observed.quantile(0.2499)).isEqualTo(2);
        assertThat(observed.quantile(0.25)).isEqualTo(4);
        assertThat(observed.quantile(0.7499)).isEqualTo(4);
        assertThat(observed.quantile(1 - Distribution.LEAST_DRAW)).isEqualTo(10);
    }

    @Test
    void observedValuesAllAlike_areConstant() {
        assertThat(Distribution.observed(List.of(3.0, 3.0)).isConstant()).isTrue();
    }

    @Test
    void shift_movesAllButTheSpread() {
        // Rule DIST-10.
        Distribution shifted = Distribution.triangular(60, 90, 240).shifted(-20);
        assertThat(shifted.mean()).isEqualTo(110);
        assertThat(shifted.sd()).isEqualTo(Distribution.triangular(60, 90, 240).sd());
        assertThat(shifted.lowest()).isEqualTo(40);
        assertThat(shifted.highest()).isEqualTo(220);
        assertThat(shifted.quantile(0.3))
                .isEqualTo(Distribution.triangular(60, 90, 240).quantile(0.3) - 20);
        assertThat(Distribution.constant(5).shifted(1).isConstant()).isTrue();
    }

    @Test
    void shiftOfNothing_isTheDistributionItself() {
        Distribution distribution = Distribution.exponential(5);
        assertThat(distribution.shifted(0)).isSameAs(distribution);
    }

    @Test
    void whatNoDistributionCanBe_isRefusedWithItsValues() {
        // Rule CHECK-1.
        assertThatThrownBy(() -> Distribution.constant(Double.NaN))
                .hasMessage("value = NaN; must be 0 or more and finite");
        assertThatThrownBy(() -> Distribution.uniform(5, 4)).hasMessage("max = 4; must be the min, 5, or more");
        assertThatThrownBy(() -> Distribution.triangular(60, 50, 240))
                .hasMessage("mode = 50; must be the min, 60, or more");
        assertThatThrownBy(() -> Distribution.normal(0, 1)).hasMessage("mean = 0; must be more than 0 and finite");
        assertThatThrownBy(() -> Distribution.normal(0, 0)).hasMessage("mean = 0; must be more than 0 and finite");
        assertThatThrownBy(() -> Distribution.lognormal(1, -1)).hasMessage("sd = -1; must be more than 0 and finite");
        assertThatThrownBy(() -> Distribution.gamma(Double.NaN, 1))
                .hasMessage("mean = NaN; must be more than 0 and finite");
        assertThatThrownBy(() -> Distribution.weibull(0, 1)).hasMessage("shape = 0; must be more than 0 and finite");
        assertThatThrownBy(() -> Distribution.weibull(1, Double.NaN))
                .hasMessage("scale = NaN; must be more than 0 and finite");
        assertThatThrownBy(() -> Distribution.exponential(0)).hasMessage("mean = 0; must be more than 0 and finite");
        assertThatThrownBy(() -> Distribution.observed(List.of())).hasMessage("no observed values; give at least one");
        assertThatThrownBy(() -> Distribution.observed(List.of(1.0, -2.0)))
                .hasMessage("observed value = -2; must be 0 or more and finite");
        assertThatThrownBy(() -> Distribution.constant(1).shifted(Double.NaN))
                .hasMessage("shift = NaN; must be finite");
    }
}
