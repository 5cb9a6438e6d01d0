package runthrough.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsTest {

    private final Units metric = Units.of(UnitSystem.METRIC);
    private final Units us = Units.of(UnitSystem.US_CUSTOMARY);

    // 32.5152 m = 106.675 ft, 0.75 m/s = 147.64 ft/min, 0.002 m = 0.07874 in, 12 t = 13.2277 short tons,
    // 7850 kg/m3 = 0.283599 lb/in3, 250 MPa = 36.2594 ksi.
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 32.5152, 32.52 m, 106.7 ft",
        "LENGTH, 12345.6, 12346 m, 40504 ft",
        "THICKNESS, 0.002, 2 mm, 0.07874 in",
        "WIDTH, 0.24, 240 mm, 9.449 in",
        "DIAMETER, 1.45, 1450 mm, 57.09 in",
        "SPEED, 0.75, 45 m/min, 147.6 ft/min",
        "TRAVEL_SPEED, 0.01, 600 mm/min, 23.62 in/min",
        "ACCELERATION, 0.3, 0.3 m/s2, 0.9843 ft/s2",
        "MASS, 500, 500 kg, 1102 lb",
        "MASS, 12000, 12 t, 13.23 short ton",
        "DENSITY, 7850, 7850 kg/m3, 0.2836 lb/in3",
        "STRESS, 250e6, 250 MPa, 36.26 ksi",
        "STRESS, 210e9, 210 GPa, 30458 ksi",
        "RATE_LENGTH, 0.75, 2700 m/h, 8858 ft/h",
        "RATE_MASS, 2.5, 9 t/h, 9.921 short ton/h"
    })
    void resultsAreShownInTheUnitsOfEachSystem(Kind kind, double si, String inMetric, String inUs) {
        assertThat(metric.text(kind, si)).isEqualTo(inMetric);
        assertThat(us.text(kind, si)).isEqualTo(inUs);
    }

    @ParameterizedTest
    @CsvSource({"8.5, 8.5 s", "95, 95 s", "119.9, 119.9 s", "120, 2 min", "5400, 90 min", "7200, 2 h", "-150, -2.5 min"
    })
    void timesAreShownInTheUnitThatSuitsTheirSize(double seconds, String text) {
        assertThat(metric.text(Kind.TIME, seconds)).isEqualTo(text);
        assertThat(us.text(Kind.TIME, seconds)).isEqualTo(text);
    }

    @Test
    void aColumnKeepsOneUnitChosenByItsGreatestValue() {
        Unit unit = metric.unitFor(Kind.TIME, 900);

        assertThat(unit).isEqualTo(Unit.MINUTE);
        assertThat(metric.fixed(900, unit, 2)).isEqualTo("15.00");
        assertThat(metric.fixed(33, unit, 2)).isEqualTo("0.55");
    }

    // 199 of 200 is 99.5 %; one in a million missing is not 100 %; sums such as 0.1 + 0.2 + 0.7 are.
    @ParameterizedTest
    @CsvSource({
        "0, 0 %",
        "1, 100 %",
        "0.9999999999999998, 100 %",
        "0.995, 99.5 %",
        "0.99996, 99.996 %",
        "0.999999, 99.9999 %",
        "0.98765432, 98.8 %",
        "0.000001, 0.0001 %",
        "0.12345, 12.35 %"
    })
    void aShareThatIsNeitherNoneNorAllIsNeverShownAsSuch(double share, String text) {
        assertThat(metric.text(Kind.SHARE, share)).isEqualTo(text);
    }

    @Test
    void whatIsNotKnownAndWhatHasNoLimitIsSaid() {
        assertThat(metric.text(Kind.TIME, Double.NaN)).isEqualTo("n/a");
        assertThat(metric.text(Kind.SPEED, Double.POSITIVE_INFINITY)).isEqualTo("unlimited");
        assertThat(metric.number(Kind.SHARE, Double.NaN)).isEqualTo("n/a");
    }

    @Test
    void aVanishingNegativeNumberIsShownAsZero() {
        assertThat(metric.fixed(-1e-9, Unit.METRE, 2)).isEqualTo("0.00");
        assertThat(metric.text(Kind.LENGTH, -0.0)).isEqualTo("0 m");
    }

    @Test
    void plainNumbersKeepTheirWholeDigits() {
        assertThat(Numbers.text(1234567.8)).isEqualTo("1234568");
        assertThat(Numbers.text(1000)).isEqualTo("1000");
        assertThat(Numbers.text(0.000123456)).isEqualTo("0.0001235");
        assertThat(Numbers.text(2.0 / 3, 2)).isEqualTo("0.67");
        assertThat(Numbers.plain(1e7)).isEqualTo("10000000");
        assertThat(Numbers.plain(0.1)).isEqualTo("0.1");
    }

    @ParameterizedTest
    @EnumSource
    void labelValueAndNumberSpeakOfTheSameUnit(Kind kind) {
        for (Units units : new Units[] {metric, us}) {
            Unit unit = units.unit(kind);
            assertThat(units.label(kind)).isEqualTo(unit.symbol());
            assertThat(units.value(kind, unit.toSi(0.5))).isCloseTo(0.5, within(1e-15));
            assertThat(units.number(kind, unit.toSi(0.5))).isEqualTo("0.5");
        }
    }

    @Test
    void theMachinesLanguageMakesNoDifference() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(metric.text(Kind.LENGTH, 1234.5)).isEqualTo("1235 m");
            assertThat(metric.text(Kind.LENGTH, 2.25)).isEqualTo("2.25 m");
        } finally {
            Locale.setDefault(before);
        }
    }
}
