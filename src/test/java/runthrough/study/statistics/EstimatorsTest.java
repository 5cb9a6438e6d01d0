package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.STATISTICS;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;

@RecordsChecks
class EstimatorsTest {

    /**
     * NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2, critical values of Student's t, 0.975 (printed to three
     * decimals: 2.776, 2.262, 2.093, 2.045, 1.984); further decimals computed at high precision.
     */
    @ParameterizedTest
    @CsvSource({"4, 2.776445105", "9, 2.262157163", "19, 2.093024054", "29, 2.045229642", "99, 1.984216952"})
    void studentQuantiles(int freedom, double quantile, CheckBook book) {
        book.check(STATISTICS, "Q1", "Student's t, 0.975, " + freedom + " degrees of freedom")
                .source(Sources.STUDENT)
                .expected(quantile)
                .within(1e-9, "digits printed")
                .got(Estimators.studentQuantile(Interval.CONFIDENCE, freedom));
    }

    /**
     * The same table, 0.995 (printed: 3.250, 2.861): intervals of 99 %. Further decimals from the closed form for odd degrees of
     * freedom, M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, 26.7.3 (from memory), halved 200 times.
     */
    @ParameterizedTest
    @CsvSource({"9, 3.249835541592", "19, 2.860934606"})
    void studentQuantilesOfANarrowTail(int freedom, double quantile, CheckBook book) {
        book.check(STATISTICS, "Q2", "Student's t, 0.995, " + freedom + " degrees of freedom")
                .source(Sources.STUDENT)
                .expected(quantile)
                .within(1e-9, "digits printed")
                .got(Estimators.studentQuantile(0.99, freedom));
    }

    /**
     * NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.2, confidence limits for the mean: n = 195, mean 9.261460,
     * standard deviation 0.022789, limits printed as 9.258242 and 9.264679.
     */
    @Test
    void nistHandbookConfidenceLimitsForTheMean(CheckBook book) {
        // Rule REPORT-12.
        // 97 values a standard deviation above the mean, 97 below, and the mean: variance 194 s^2 / 194 = s^2.
        double[] values = new double[195];
        for (int i = 0; i < values.length; i++) {
            values[i] = 9.261460 + 0.022789 * (i == 194 ? 0 : i % 2 == 0 ? 1 : -1);
        }
        Interval interval = Estimators.mean(values).interval().orElseThrow();

        book.check(STATISTICS, "Q4", "lower limit of the mean, as printed")
                .source(Sources.NIST_MEAN_INTERVAL)
                .expected(9.258242)
                .within(1.5e-6, "digits of the data printed")
                .got(interval.low());
        book.check(STATISTICS, "Q4", "upper limit of the mean, as printed")
                .source(Sources.NIST_MEAN_INTERVAL)
                .expected(9.264679)
                .within(1.5e-6, "digits of the data printed")
                .got(interval.high());
        // 9.261460 -+ 1.972267533 * 0.022789 / sqrt(195)
        book.check(STATISTICS, "Q4", "lower limit of the mean, recomputed")
                .source(Sources.STUDENT)
                .expected(9.258241)
                .within(5e-7, "half of the last digit")
                .got(interval.low());
        book.check(STATISTICS, "Q4", "upper limit of the mean, recomputed")
                .source(Sources.STUDENT)
                .expected(9.264679)
                .within(5e-7, "half of the last digit")
                .got(interval.high());
        assertThat(interval.method()).isEqualTo(Interval.Method.STUDENT_T);
    }

    @Test
    void oneReplicationHasNeitherSpreadNorInterval() {
        Estimate estimate = Estimators.mean(4.2);

        assertThat(estimate.mean()).isEqualTo(4.2);
        assertThat(estimate.sd()).isEmpty();
        assertThat(estimate.interval()).isEmpty();
        assertThat(estimate.halfWidth()).isEmpty();
    }

    @Test
    void replicationsThatDoNotDifferHaveNoIntervalOfZeroWidth() {
        // Rule REPORT-12.
        Estimate estimate = Estimators.mean(3, 3, 3);

        assertThat(estimate.sd()).hasValue(0);
        assertThat(estimate.interval()).isEmpty();
    }

    @Test
    void replicationsThatDifferByRoundingAloneHaveNoInterval() {
        assertThat(Estimators.mean(0.1 + 0.2, 0.3).interval()).isEmpty();
        assertThat(Estimators.mean(0.3, 0.3 + 1e-9).interval()).isPresent();
    }

    @Test
    void anAmountIsNotSaidToBeNegative() {
        // Mean 1, sd 2, n 4: 1 - 3.182 * 2/2 < 0.
        Estimate estimate = Estimators.amount(0, 0, 0, 4);

        assertThat(estimate.interval().orElseThrow().low()).isZero();
        assertThat(estimate.interval().orElseThrow().high()).isCloseTo(1 + 3.182446, within(1e-6));
    }

    @Test
    void aShareInTheMiddleHasStudentsInterval() {
        // Shares 0.4, 0.5, 0.6: mean 0.5, sd 0.1; t(2) 0.975 = 4.302653; half width 0.248414.
        Estimate estimate = Estimators.share(new long[] {40, 50, 60}, new long[] {100, 100, 100});

        Interval interval = estimate.interval().orElseThrow();
        assertThat(interval.method()).isEqualTo(Interval.Method.STUDENT_T);
        assertThat(interval.low()).isCloseTo(0.5 - 0.248414, within(1e-6));
        assertThat(interval.high()).isCloseTo(0.5 + 0.248414, within(1e-6));
    }

    @Test
    void aShareOfOneHasWilsonsBoundFromAllTrials() {
        Estimate estimate = Estimators.share(new long[] {100, 100}, new long[] {100, 100});

        assertThat(estimate.mean()).isEqualTo(1);
        assertThat(estimate.interval()).contains(Wilson.interval(1, 200));
    }

    @Test
    void aShareThatDoesNotVaryHasWilsonsInterval() {
        // Rule REPORT-13.
        Estimate estimate = Estimators.share(new long[] {50, 50}, new long[] {100, 100});

        assertThat(estimate.interval()).contains(Wilson.interval(0.5, 200));
    }

    @Test
    void aSingleReplicationHasWilsonsInterval() {
        Estimate estimate = Estimators.share(new long[] {81}, new long[] {263});

        assertThat(estimate.sd()).isEmpty();
        assertThat(estimate.interval()).contains(Wilson.interval(81 / 263.0, 263));
    }

    @Test
    void withFewFailuresTheIntervalIsWilsonsAndStaysBelowOne() {
        // Rule REPORT-13.
        // One failure in each of three replications out of ten; student's t would reach beyond 1.
        long[] trials = new long[10];
        Arrays.fill(trials, 100);
        long[] successes = {100, 100, 99, 100, 99, 100, 100, 100, 99, 100};
        Interval interval = Estimators.share(successes, trials).interval().orElseThrow();

        // Variance between shares 0.21 / 9 * 1e-2^2 * 10 = 2.33e-6 is below 0.997 * 0.003 / 100 = 2.99e-5: no design
        // effect.
        assertThat(interval).isEqualTo(Wilson.interval(0.997, 1000));
        assertThat(interval.high()).isLessThan(1);
    }

    /** It is in one replication only, however independent the trials are: that shows no bunch. */
    @Test
    void aSingleFailureIsNoBunch() {
        // Rule REPORT-13.
        Interval interval = Estimators.share(new long[] {51, 50}, new long[] {51, 51})
                .interval()
                .orElseThrow();

        assertThat(interval).isEqualTo(Wilson.interval(101 / 102.0, 102));
    }

    @Test
    void failuresThatComeInBunchesCountForFewerTrials() {
        // Rule REPORT-13.
        // Nine failures, all in one of ten replications: shares nine times 1 and once 0.91, variance 0.09^2 / 10 =
        // 8.1e-4;
        // independent trials would give 0.991 * 0.009 / 999 * 10 = 8.92793e-5. Design effect 9.07265. Times the square
        // of
        // Student's t with 9 degrees of freedom over the normal deviate, 2.262157163 / 1.959963985 = 1.154183.
        long[] trials = new long[10];
        Arrays.fill(trials, 100);
        long[] successes = trials.clone();
        successes[4] = 91;
        Interval interval = Estimators.share(successes, trials).interval().orElseThrow();

        Interval expected =
                Wilson.interval(0.991, 1000 / (9.081735620 * 0.999) / Math.pow(2.262157163 / 1.959963985, 2));
        assertThat(interval.low()).isCloseTo(expected.low(), within(1e-9));
        assertThat(interval.high()).isCloseTo(expected.high(), within(1e-9));
    }

    @Test
    void replicationsWithoutTrialsAreLeftOut() {
        Estimate estimate = Estimators.share(new long[] {0, 3, 4}, new long[] {0, 4, 4});

        assertThat(estimate.mean()).isEqualTo(0.875);
        assertThat(estimate.replications()).isEqualTo(2);
    }

    @Test
    void aRateOfNothingSeenHasTheRuleOfThree() {
        // Rule REPORT-12.
        // 3 / (200 + 100) shifts
        Estimate estimate = Estimators.rate(new long[] {0, 0}, new double[] {200, 100});

        Interval interval = estimate.interval().orElseThrow();
        assertThat(interval.method()).isEqualTo(Interval.Method.RULE_OF_THREE);
        assertThat(interval.low()).isZero();
        assertThat(interval.high()).isCloseTo(0.01, within(1e-15));
    }

    @Test
    void aRateIsTheMeanOfTheReplicationsRates() {
        // 2/4 and 9/6, not 11/10.
        Estimate estimate = Estimators.rate(new long[] {2, 9}, new double[] {4, 6});

        assertThat(estimate.mean()).isEqualTo(1);
        assertThat(estimate.interval().orElseThrow().low()).isPositive();
    }

    @Test
    void aRateOfManyEventsHasStudentsInterval() {
        // 40/4, 50/4 and 60/4: mean 12.5, sd 2.5; t(2) 0.975 = 4.302653; half width 6.2104. Pearson 2 x 100/50 = 4 over
        // 2
        // degrees of freedom, within chance: 150 events count as 75.
        Interval interval = Estimators.rate(new long[] {40, 50, 60}, new double[] {4, 4, 4})
                .interval()
                .orElseThrow();

        assertThat(interval.method()).isEqualTo(Interval.Method.STUDENT_T);
        assertThat(interval.low()).isCloseTo(12.5 - 6.2104, within(1e-4));
    }

    @Test
    void anIntervalOfZeroWidthIsRefused() {
        assertThatThrownBy(() -> new Interval(1, 1, Interval.Method.STUDENT_T))
                .hasMessage("interval from 1.0 to 1.0; must have a width");
        assertThatThrownBy(() -> new Interval(Double.NaN, 1, Interval.Method.STUDENT_T))
                .hasMessageContaining("NaN");
    }

    /** Over 4,000 seeds the standard error of a coverage of 95 % is 0.34 %; three of them are allowed either way. */
    @ParameterizedTest
    @CsvSource({"10, 100, 0.9", "20, 200, 0.95", "20, 500, 0.99", "5, 100, 0.5"})
    void ofManyIntervals95PercentHoldTheTrueShare(int replications, int trials, double share) {
        assertThat(coverage(replications, trials, share)).isBetween(0.94, 0.96);
    }

    /**
     * With an expected two to five failures counts are coarse, and so is the coverage, which comes from the binomial
     * distribution; what matters is that it does not fall much below 95 %.
     */
    @ParameterizedTest
    @CsvSource({"10, 100, 0.998", "20, 50, 0.996", "50, 200, 0.9995"})
    void withFewFailuresIntervalsAreNotMuchTooShort(int replications, int trials, double share) {
        assertThat(coverage(replications, trials, share)).isBetween(0.93, 0.99);
    }

    private static double coverage(int replications, int trials, double share) {
        int held = 0;
        int seeds = 4000;
        for (int seed = 0; seed < seeds; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            long[] successes = new long[replications];
            long[] all = new long[replications];
            for (int i = 0; i < replications; i++) {
                all[i] = trials;
                for (int k = 0; k < trials; k++) {
                    successes[i] += random.nextDouble() < share ? 1 : 0;
                }
            }
            held += Estimators.share(successes, all).interval().orElseThrow().contains(share) ? 1 : 0;
        }
        return (double) held / seeds;
    }
}
