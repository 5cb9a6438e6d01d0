package runthrough.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.STATISTICS;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;

/**
 * Published values: R. G. Newcombe, "Two-sided confidence intervals for the single proportion: comparison of seven methods",
 * Statistics in Medicine 17, 857-872, 1998, Table I, method 3 (printed to four decimals: 0.2553 to 0.3662, 0.0624 to 0.1605,
 * 0 to 0.1611); further decimals from the formula at high precision.
 */
@RecordsChecks
class WilsonTest {

    @ParameterizedTest
    @CsvSource({
        "Q5, 81, 263, 0.255288520, 0.366209577",
        "Q6, 15, 148, 0.062386400, 0.160487242",
        "Q7, 0, 20, 0, 0.161125158",
    })
    void newcombeTableI(String id, int successes, int trials, double low, double high, CheckBook book) {
        // Rule REPORT-13.
        Interval interval = Wilson.interval((double) successes / trials, trials);

        String what = successes + " of " + trials + ", ";
        book.check(STATISTICS, id, what + "lower limit")
                .source(Sources.NEWCOMBE)
                .expected(low)
                .within(successes == 0 ? 0 : 1e-9, successes == 0 ? "none is none" : "digits printed")
                .got(interval.low());
        book.check(STATISTICS, id, what + "upper limit")
                .source(Sources.NEWCOMBE)
                .expected(high)
                .within(1e-9, "digits printed")
                .got(interval.high());
        assertThat(interval.method()).isEqualTo(Interval.Method.WILSON);
    }

    @Test
    void normalDeviateOf95Percent(CheckBook book) {
        book.check(STATISTICS, "Q3", "normal deviate of 95 %")
                .source(Sources.NORMAL_QUANTILE)
                .expected(1.959963984540)
                .within(1e-12, "digits printed")
                .got(Wilson.Z);
    }

    @Test
    void atOneTheIntervalEndsAtOneAndHasAWidth() {
        // n / (n + z^2) = 200 / 203.841459
        Interval interval = Wilson.interval(1, 200);

        assertThat(interval.high()).isEqualTo(1);
        assertThat(interval.low()).isCloseTo(200 / 203.8414588, within(1e-9));
    }

    @Test
    void atZeroTheIntervalBeginsAtZeroExactly() {
        assertThat(Wilson.interval(0, 7).low()).isZero();
    }

    @Test
    void trialsToTell_atThatManyTheTargetLiesOnTheEndOfTheInterval() {
        // z^2 t/(1 - t) = 3.8414588 * 199 = 764.4503
        assertThat(Wilson.trialsToTell(1, 0.995)).isCloseTo(764.4503, within(1e-4));
        assertThat(Wilson.interval(1, Wilson.trialsToTell(1, 0.995)).low()).isCloseTo(0.995, within(1e-12));
        assertThat(Wilson.interval(0.97, Wilson.trialsToTell(0.97, 0.98)).high())
                .isCloseTo(0.98, within(1e-12));
    }

    @Test
    void trialsToTell_noNumberDistinguishesAShareFromItself() {
        assertThat(Wilson.trialsToTell(0.9, 0.9)).isInfinite();
        assertThat(Wilson.trialsToTell(1, 1)).isInfinite();
    }
}
