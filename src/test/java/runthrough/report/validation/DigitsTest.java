package runthrough.report.validation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitsTest {

    @ParameterizedTest
    @CsvSource({
        // first digit of the tolerance at 1e-6: one more is shown
        "4684.014115537466, 4.684e-6, 4684.0141155",
        "0.798931234, 0.0024, 0.7989",
        "140.0625, 1.4e-7, 140.0625",
        // as far as a tolerance of 30 has any: to the unit
        "12345.678, 30, 12346",
        "12345.678, 3000, 12300",
        "0, 1e-9, 0",
        "-1e-13, 1e-9, 0",
        "-2.5, 1e-9, -2.5",
        "0.00508, 0, 0.00508",
        "186, 0, 186",
        "10000000.2, 1e-6, 10000000.2"
    })
    void valuesHaveTheDigitsThatTheirToleranceGivesAMeaning(double value, double tolerance, String text) {
        assertThat(Digits.value(value, tolerance)).isEqualTo(text);
    }

    @Test
    void lastBitsOfADoubleMakeNoDifference() {
        double value = 4684.014115537466;
        double neighbour = Math.nextUp(Math.nextUp(value));
        assertThat(Digits.value(neighbour, 4.7e-6)).isEqualTo(Digits.value(value, 4.7e-6));
        assertThat(Digits.error(Math.abs(neighbour - value), 4.7e-6)).isEqualTo("below 1e-7");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1e-9, below 1e-10",
        "3.3e-10, 2.2e-9, 3e-10",
        "1e-13, 1e-9, below 1e-10",
        "0.00014, 0.00015, 0.00014",
        "0, 0, 0",
        "2, 0, 2"
    })
    void errorsAreShownAsFarAsTheValueIs(double error, double tolerance, String text) {
        assertThat(Digits.error(error, tolerance)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0.00234, 0.0023", "2.34e-9, 2.3e-9", "0, 0", "1234, 1200", "1, 1", "9.99e-10, 1e-9", "123456789, 1.2e8"
    })
    void tolerancesHaveTwoDigits(double value, String text) {
        assertThat(Digits.text(value)).isEqualTo(text);
    }

    @Test
    void whatIsNoNumberIsSaidToBeNone() {
        assertThat(Digits.value(Double.NaN, 1)).isEqualTo("none");
        assertThat(Digits.value(Double.POSITIVE_INFINITY, 1)).isEqualTo("unlimited");
        assertThat(Digits.error(Double.NaN, 1)).isEqualTo("none");
    }
}
