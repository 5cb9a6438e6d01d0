package runthrough.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runthrough.report.validation.Topic.UNITS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.WATT;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import runthrough.checks.CheckBook;
import runthrough.checks.RecordsChecks;
import runthrough.checks.Sources;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;

@RecordsChecks
class UnitTest {

    /** The same units built from the reference implementation of JSR 385, by its API (its text parsing is not used). */
    private static final Map<Unit, javax.measure.Unit<?>> REFERENCE = reference();

    private static Map<Unit, javax.measure.Unit<?>> reference() {
        javax.measure.Unit<?> mm = MetricPrefix.MILLI(METRE);
        javax.measure.Unit<?> inch = USCustomary.INCH;
        javax.measure.Unit<?> foot = USCustomary.FOOT;
        javax.measure.Unit<?> pound = USCustomary.POUND;
        // Standard gravity, 9.80665 m/s2, exact by convention.
        javax.measure.Unit<?> poundForce =
                pound.multiply(METRE.divide(SECOND.pow(2))).multiply(9.80665);
        javax.measure.Unit<?> psi = poundForce.divide(inch.pow(2));

        Map<Unit, javax.measure.Unit<?>> units = new EnumMap<>(Unit.class);
        units.put(Unit.MICROMETRE, MetricPrefix.MICRO(METRE));
        units.put(Unit.MILLIMETRE, mm);
        units.put(Unit.CENTIMETRE, MetricPrefix.CENTI(METRE));
        units.put(Unit.METRE, METRE);
        units.put(Unit.KILOMETRE, MetricPrefix.KILO(METRE));
        units.put(Unit.INCH, inch);
        units.put(Unit.FOOT, foot);
        units.put(Unit.YARD, USCustomary.YARD);
        units.put(Unit.METRE_PER_SECOND, METRE.divide(SECOND));
        units.put(Unit.METRE_PER_MINUTE, METRE.divide(MINUTE));
        units.put(Unit.METRE_PER_HOUR, METRE.divide(HOUR));
        units.put(Unit.MILLIMETRE_PER_SECOND, mm.divide(SECOND));
        units.put(Unit.MILLIMETRE_PER_MINUTE, mm.divide(MINUTE));
        units.put(Unit.FOOT_PER_SECOND, foot.divide(SECOND));
        units.put(Unit.FOOT_PER_MINUTE, foot.divide(MINUTE));
        units.put(Unit.FOOT_PER_HOUR, foot.divide(HOUR));
        units.put(Unit.INCH_PER_SECOND, inch.divide(SECOND));
        units.put(Unit.INCH_PER_MINUTE, inch.divide(MINUTE));
        units.put(Unit.METRE_PER_SECOND_SQUARED, METRE.divide(SECOND.pow(2)));
        units.put(Unit.METRE_PER_MINUTE_PER_SECOND, METRE.divide(MINUTE).divide(SECOND));
        units.put(Unit.MILLIMETRE_PER_SECOND_SQUARED, mm.divide(SECOND.pow(2)));
        units.put(Unit.FOOT_PER_SECOND_SQUARED, foot.divide(SECOND.pow(2)));
        units.put(Unit.FOOT_PER_MINUTE_PER_SECOND, foot.divide(MINUTE).divide(SECOND));
        units.put(Unit.INCH_PER_SECOND_SQUARED, inch.divide(SECOND.pow(2)));
        units.put(Unit.MILLISECOND, MetricPrefix.MILLI(SECOND));
        units.put(Unit.SECOND, SECOND);
        units.put(Unit.MINUTE, MINUTE);
        units.put(Unit.HOUR, HOUR);
        units.put(Unit.DAY, DAY);
        units.put(Unit.GRAM, GRAM);
        units.put(Unit.KILOGRAM, KILOGRAM);
        units.put(Unit.TONNE, KILOGRAM.multiply(1000));
        units.put(Unit.POUND, pound);
        units.put(Unit.SHORT_TON, pound.multiply(2000));
        units.put(Unit.LONG_TON, pound.multiply(2240));
        units.put(Unit.KILOGRAM_PER_CUBIC_METRE, KILOGRAM.divide(CUBIC_METRE));
        units.put(
                Unit.GRAM_PER_CUBIC_CENTIMETRE,
                GRAM.divide(MetricPrefix.CENTI(METRE).pow(3)));
        units.put(Unit.POUND_PER_CUBIC_INCH, pound.divide(inch.pow(3)));
        units.put(Unit.POUND_PER_CUBIC_FOOT, pound.divide(foot.pow(3)));
        units.put(Unit.PASCAL, PASCAL);
        units.put(Unit.KILOPASCAL, MetricPrefix.KILO(PASCAL));
        units.put(Unit.MEGAPASCAL, MetricPrefix.MEGA(PASCAL));
        units.put(Unit.GIGAPASCAL, MetricPrefix.GIGA(PASCAL));
        units.put(Unit.POUND_PER_SQUARE_INCH, psi);
        units.put(Unit.KILOPOUND_PER_SQUARE_INCH, psi.multiply(1000));
        units.put(Unit.NEWTON, NEWTON);
        units.put(Unit.KILONEWTON, MetricPrefix.KILO(NEWTON));
        units.put(Unit.POUND_FORCE, poundForce);
        units.put(Unit.NEWTON_METRE, NEWTON.multiply(METRE));
        units.put(Unit.KILONEWTON_METRE, MetricPrefix.KILO(NEWTON).multiply(METRE));
        units.put(Unit.POUND_FORCE_FOOT, poundForce.multiply(foot));
        units.put(Unit.WATT, WATT);
        units.put(Unit.KILOWATT, MetricPrefix.KILO(WATT));
        units.put(Unit.HORSEPOWER, poundForce.multiply(foot).multiply(550).divide(SECOND));
        units.put(Unit.PERCENT, PERCENT);
        units.put(Unit.KILOGRAM_PER_HOUR, KILOGRAM.divide(HOUR));
        units.put(Unit.TONNE_PER_HOUR, KILOGRAM.multiply(1000).divide(HOUR));
        units.put(Unit.POUND_PER_HOUR, pound.divide(HOUR));
        units.put(Unit.SHORT_TON_PER_HOUR, pound.multiply(2000).divide(HOUR));
        return units;
    }

    private static javax.measure.Unit<?> si(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> METRE;
            case SPEED -> METRE.divide(SECOND);
            case ACCELERATION -> METRE.divide(SECOND.pow(2));
            case TIME -> SECOND;
            case MASS -> KILOGRAM;
            case DENSITY -> KILOGRAM.divide(CUBIC_METRE);
            case STRESS -> PASCAL;
            case FORCE -> NEWTON;
            case TORQUE -> NEWTON.multiply(METRE);
            case POWER -> WATT;
            case SHARE -> AbstractUnit.ONE;
            case MASS_RATE -> KILOGRAM.divide(SECOND);
        };
    }

    @ParameterizedTest
    @EnumSource
    void factorIsThatOfTheReferenceImplementation(Unit unit) throws IncommensurableException {
        double expected = Objects.requireNonNull(REFERENCE.get(unit))
                .getConverterToAny(si(unit.dimension()))
                .convert(1.0);

        assertThat(unit.toSi(1)).isCloseTo(expected, within(2e-15 * expected));
    }

    // The exact rows must agree to the last bit.
    @ParameterizedTest
    @CsvSource({
        "U1, in, 0.0254, m",
        "U2, ft, 0.3048, m",
        "U3, ft/min, 0.00508, m/s",
        "U4, lb, 0.45359237, kg",
        "U5, short ton, 907.18474, kg",
        "U6, long ton, 1016.0469088, kg"
    })
    void exactFactorsAreThoseOfNistSp811(String id, String symbol, double factor, String si, CheckBook book) {
        book.check(UNITS, id, "1 " + symbol)
                .source("U3".equals(id) ? Sources.NIST_SP_811_SEEN : Sources.NIST_SP_811)
                .unit(si)
                .expected(factor)
                .exactly()
                .got(Unit.bySymbol(symbol).orElseThrow().toSi(1));
    }

    // Recomputed from the exact ones and rounded to the twelve digits shown: half a unit of the last one is at most
    // 5e-12 of the value.
    @ParameterizedTest
    @CsvSource({"U8, psi, 6894.75729317, Pa", "U9, lb/ft3, 16.0184633740, kg/m3", "U10, lb/in3, 27679.9047102, kg/m3"})
    void roundedFactorsAreThoseOfNistSp811(String id, String symbol, double factor, String si, CheckBook book) {
        book.check(UNITS, id, "1 " + symbol)
                .source(Sources.NIST_SP_811)
                .unit(si)
                .expected(factor)
                .relative(5e-12)
                .got(Unit.bySymbol(symbol).orElseThrow().toSi(1));
    }

    /** Units that no scenario needs as such, made of those that it does. */
    @Test
    void unitsOfTheTradeAreMadeOfThese(CheckBook book) {
        double pound = Unit.POUND.toSi(1);
        double foot = Unit.FOOT.toSi(1);
        double inch = Unit.INCH.toSi(1);
        book.check(UNITS, "U7", "1 lbf, from psi and in")
                .source(Sources.NIST_SP_811)
                .unit("N")
                .expected(4.4482216152605)
                .relative(1e-12)
                .got(Unit.POUND_PER_SQUARE_INCH.toSi(1) * inch * inch);
        book.check(UNITS, "U11", "1 lb/ft2, from lb and ft")
                .source(Sources.NIST_SP_811)
                .unit("kg/m2")
                .expected(4.88242763638)
                .relative(5e-12)
                .got(pound / (foot * foot));
        book.check(UNITS, "U12", "1 lb/ft, from lb and ft")
                .source(Sources.NIST_SP_811)
                .unit("kg/m")
                .expected(1.48816394357)
                .relative(5e-12)
                .got(pound / foot);
        book.check(UNITS, "U13", "1 lb per inch of width, from lb and in")
                .source(Sources.NIST_SP_811)
                .unit("kg/mm")
                .expected(0.0178579673228)
                .relative(5e-12)
                .got(pound / (1000 * inch));
    }

    // Worked from the exact factors: 350 x 0.3048 / 60 m/s, 600 x 0.3048 / 60 m/s, 40000 x 0.45359237 kg,
    // 0.0598 x 0.0254 m, 48 x 0.0254 m, 22 x 907.18474 kg.
    @ParameterizedTest
    @CsvSource({
        "350, ft/min, 1.778, m/s",
        "600, ft/min, 3.048, m/s",
        "40000, lb, 18143.6948, kg",
        "0.0598, in, 0.00151892, m",
        "48, in, 1.2192, m",
        "22, short ton, 19958.06428, kg",
        "45, m/min, 0.75, m/s",
        "2, mm, 0.002, m"
    })
    void conversionsRoundAtMostInTheLastPlace(double value, String symbol, double si, String unit, CheckBook book) {
        book.check(UNITS, "U", Numbers.plain(value) + " " + symbol)
                .source(Sources.CONVERSIONS)
                .unit(unit)
                .expected(si)
                .within(Math.ulp(si), "last bit")
                .got(Unit.bySymbol(symbol).orElseThrow().toSi(value));
    }

    @ParameterizedTest
    @EnumSource
    void thereAndBackGivesTheNumberAgain(Unit unit) {
        assertThat(unit.fromSi(unit.toSi(123.456))).isCloseTo(123.456, within(1e-13));
    }

    @Test
    void powersAndMicroMayBeWrittenAsSigns() {
        assertThat(Unit.bySymbol("m/s²")).contains(Unit.METRE_PER_SECOND_SQUARED);
        assertThat(Unit.bySymbol("kg/m^3")).contains(Unit.KILOGRAM_PER_CUBIC_METRE);
        assertThat(Unit.bySymbol("µm")).contains(Unit.MICROMETRE);
        assertThat(Unit.bySymbol("short  ton")).contains(Unit.SHORT_TON);
    }

    @Test
    void noTwoUnitsShareASymbol() {
        assertThat(Unit.values()).extracting(Unit::symbol).doesNotHaveDuplicates();
    }
}
