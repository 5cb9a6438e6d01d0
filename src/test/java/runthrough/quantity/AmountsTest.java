package runthrough.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Amounts as a customer reads them. */
class AmountsTest {

    @Test
    void withoutAnIntervalThreeDigits() {
        assertThat(plain(Amounts.text(1_612_345))).isEqualTo("1 610 000");
        assertThat(plain(Amounts.text(-1_615_001))).isEqualTo("-1 620 000");
        assertThat(Amounts.text(0.16462)).isEqualTo("0.165");
        assertThat(Amounts.text(0)).isEqualTo("0");
    }

    /** NIST SP 811, 2008, section 10.5.3: four digits may stand together. */
    @Test
    void fourDigitsStandTogetherAndFiveDoNot() {
        assertThat(Amounts.exact(9999)).isEqualTo("9999");
        assertThat(plain(Amounts.exact(10_000))).isEqualTo("10 000");
        assertThat(Amounts.exact(1234.5)).isEqualTo("1234.5");
    }

    @Test
    void thousandsArePartedByASpaceAtWhichNoLineBreaks() {
        assertThat(Amounts.exact(265_000)).isEqualTo("265\u00a0000");
    }

    /** Half of 4100 leaves the thousands certain, half of 1200 the hundreds: a first digit below 3 shows a second one. */
    @Test
    void digitsEndWhereHalfTheIntervalDoes() {
        assertThat(plain(Amounts.text(1_612_345, 4100))).isEqualTo("1 612 000");
        assertThat(plain(Amounts.text(1_612_345, 1200))).isEqualTo("1 612 300");
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

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
