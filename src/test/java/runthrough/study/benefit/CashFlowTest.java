package runthrough.study.benefit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.ECONOMICS;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;

/** Payback, present value and rate of return, against published factors and worked cases. */
@RecordsChecks
class CashFlowTest {
    private static final double PUBLISHED = 1e-9;

    private static void check(CheckBook book, String id, String what, String unit, double expected, double got) {
        book.check(ECONOMICS, id, what)
                .source(Sources.LIFE_CYCLE_COSTING)
                .unit(unit)
                .expected(expected)
                .relative(PUBLISHED)
                .got(got);
    }

    @ParameterizedTest
    @CsvSource({"E1, 0.07, 10, 0.5083492921", "E2, 0.03, 20, 0.5536757542"})
    void singlePresentValueFactorsAreThePublishedOnes(
            String id, double rate, int years, double factor, CheckBook book) {
        check(book, id, "SPV, " + rate + ", " + years + " y", "", factor, CashFlow.singlePresentValue(rate, years));
    }

    @ParameterizedTest
    @CsvSource({
        "E1, 0.07, 10, 7.023581541",
        "E1, 0.07, 15, 9.107914005",
        "E2, 0.03, 10, 8.530202837",
        "E2, 0.03, 25, 17.41314769"
    })
    void uniformPresentValueFactorsAreThePublishedOnes(
            String id, double rate, int years, double factor, CheckBook book) {
        check(book, id, "UPV, " + rate + ", " + years + " y", "", factor, CashFlow.uniformPresentValue(rate, years));
    }

    @Test
    void priceAndLevelGainComeToThePublishedWorth(CheckBook book) {
        CashFlow flow = CashFlow.level(250_000, 80_000, 5);
        check(book, "E3", "NPV, 8 %", "", 69416.80297, flow.presentValue(0.08));
        check(
                book,
                "E3",
                "internal rate of return",
                "",
                0.1803066689,
                flow.internalRate().orElseThrow());
        check(
                book,
                "E3",
                "simple payback",
                "y",
                3.125,
                CashFlow.simplePayback(250_000, 80_000).orElseThrow());
        check(
                book,
                "E3",
                "discounted payback, 8 %",
                "y",
                3.738022098,
                CashFlow.discountedPayback(250_000, 80_000, 0.08).orElseThrow());
    }

    @Test
    void unevenFlowsComeToThePublishedWorth_firstFlowAtTimeZero(CheckBook book) {
        CashFlow flow = new CashFlow(List.of(-10_000.0, 3000.0, 4200.0, 6800.0));
        check(book, "E4", "NPV, 10 %, first flow at time zero", "", 1307.287754, flow.presentValue(0.1));
        check(
                book,
                "E4",
                "NPV, 10 %, first flow a year later, as spreadsheets have it",
                "",
                1188.443412,
                flow.presentValue(0.1) * CashFlow.singlePresentValue(0.1, 1));
        check(
                book,
                "E4",
                "internal rate of return",
                "",
                0.1634056007,
                flow.internalRate().orElseThrow());
    }

    /** At the internal rate nothing is left, whatever the flows. */
    @Test
    void atTheInternalRateThePresentValueIsNothing() {
        CashFlow flow = CashFlow.level(1000, 130, 12);
        assertThat(flow.presentValue(flow.internalRate().orElseThrow())).isCloseTo(0, within(1e-6));
    }

    @Test
    void whatNeverComesBackHasNeitherPaybackNorRate() {
        assertThat(CashFlow.simplePayback(1000, 0)).isEmpty();
        assertThat(CashFlow.simplePayback(1000, -5)).isEmpty();
        // 50 a year is less than the interest on 1000 at 8 %.
        assertThat(CashFlow.discountedPayback(1000, 50, 0.08)).isEmpty();
        assertThat(CashFlow.level(1000, -5, 10).internalRate()).isEmpty();
        assertThat(CashFlow.level(0, 5, 10).internalRate()).isEmpty();
    }

    @Test
    void flowsThatTurnTwiceHaveNoSingleRate() {
        assertThat(new CashFlow(List.of(-100.0, 230.0, -132.0)).internalRate()).isEmpty();
    }

    /** A loss over all years has a rate below nothing: 100 that bring 2 x 40 give (1+r) = (0.4 + sqrt(0.16 + 1.6))/2 ... */
    @Test
    void rateMayBeNegative() {
        double factor = (0.4 + Math.sqrt(0.16 + 1.6)) / 2;
        assertThat(CashFlow.level(100, 40, 2).internalRate().orElseThrow()).isCloseTo(factor - 1, within(1e-9));
    }

    @Test
    void atNoRateEveryYearCountsTheSame() {
        assertThat(CashFlow.uniformPresentValue(0, 7)).isEqualTo(7);
        assertThat(CashFlow.uniformPresentValue(1e-12, 7)).isCloseTo(7, within(1e-9));
        assertThat(CashFlow.discountedPayback(1000, 100, 0)).hasValue(10);
    }

    /** -1000; then 100 a year: at 25 % the first is worth 80 now, the second 64. */
    @Test
    void runningTotalIsWhatItIsWorthNow() {
        assertThat(CashFlow.level(1000, 100, 2).runningTotal(0.25)).containsExactly(-1000.0, -920.0, -856.0);
    }
}
