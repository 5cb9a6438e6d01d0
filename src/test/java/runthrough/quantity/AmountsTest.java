package runthrough.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts as a customer reads them. */
class AmountsTest {

    @Test
    void withoutAnIntervalThreeDigits() {
        assertThat(Amounts.text(1_612_345)).isEqualTo("1 610 000");
        assertThat(Amounts.text(-1_615_001)).isEqualTo("-1 620 000");
        assertThat(Amounts.text(0.16462)).isEqualTo("0.165");
        assertThat(Amounts.text(0)).isEqualTo("0");
    }

    /** NIST SP 811, 2008, section 10.5.3: four digits may stand together. */
    @Test
    void fourDigitsStandTogetherAndFiveDoNot() {
        assertThat(Amounts.exact(9999)).isEqualTo("9999");
        assertThat(Amounts.exact(10_000)).isEqualTo("10 000");
        assertThat(Amounts.exact(1234.5)).isEqualTo("1234.5");
    }

    /** One way everywhere: counts, results with and without an interval, what was given, amounts, and axes. */
    @ParameterizedTest
    @CsvSource({"9999, 9999", "10000, 10 000", "-265000, -265 000", "1230000, 1 230 000"})
    void thousandsAreApartInTheSameWayEverywhere(double number, String text) {
        assertThat(Numbers.count((long) number)).isEqualTo(text);
        assertThat(Notation.of(Unit.METRE).text(number)).isEqualTo(text + " m");
        assertThat(Notation.of(Unit.METRE).text(number, 0.1)).isEqualTo(text + ".00 m");
        assertThat(Notation.of(Unit.METRE).with(Rounding.GIVEN).text(number)).isEqualTo(text + " m");
        assertThat(Amounts.exact(number)).isEqualTo(text);
        assertThat(Amounts.grouped().format(number)).isEqualTo(text);
    }

    @Test
    void decimalsStandTogether() {
        assertThat(Numbers.thousandsApart("12345.678901")).isEqualTo("12 345.678901");
        assertThat(Numbers.thousandsApart("1234.5678")).isEqualTo("1234.5678");
        assertThat(Numbers.thousandsApart("unlimited")).isEqualTo("unlimited");
    }

    /** Half of 120 leaves the tens certain: of five digits before the point, no more are written than of five behind it. */
    @Test
    void aLargeResultIsRoundedBeforeThePoint() {
        assertThat(Notation.of(Unit.TONNE).text(11_559_000)).isEqualTo("11 600 t");
        assertThat(Notation.of(Unit.TONNE).text(11_559_000, 120_000)).isEqualTo("11 560 t");
        assertThat(Notation.of(Unit.TONNE).text(1_155_900)).isEqualTo("1156 t");
    }

    /** Half of 4100 leaves the thousands certain, half of 1200 the hundreds: a first digit below 3 shows a second one. */
    @Test
    void digitsEndWhereHalfTheIntervalDoes() {
        assertThat(Amounts.text(1_612_345, 4100)).isEqualTo("1 612 000");
        assertThat(Amounts.text(1_612_345, 1200)).isEqualTo("1 612 300");
        assertThat(Amounts.text(0.16462, 0.0004)).isEqualTo("0.1646");
        assertThat(Amounts.text(0.15, 0.0004)).isEqualTo("0.1500");
    }

    @Test
    void whatIsLostInItsIntervalIsZero_withoutASign() {
        assertThat(Amounts.text(-3, 400)).isEqualTo("0");
    }

    @Test
    void whatIsNoNumberSaysSo() {
        assertThat(Amounts.text(Double.NaN, 1)).isEqualTo("n/a");
        assertThat(Amounts.text(Double.POSITIVE_INFINITY)).isEqualTo("unlimited");
    }
}
