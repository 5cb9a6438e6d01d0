package runthrough.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The closed table of units that may be read and written. Each is {@code multiplier / divisor} SI units, both whole
 * numbers that a double holds exactly. To SI a conversion is worked out in decimals and rounded once, so that what is
 * equal on paper is equal to the last bit: {@code 45 m/min} and 0.75 m/s, {@code 41.5 in} and {@code 1054.1 mm}.
 *
 * <p>Factors: B. N. Taylor and A. Thompson, Guide for the Use of the International System of Units, NIST SP 811 (2008),
 * Appendix B: inch 0.0254 m, avoirdupois pound 0.453 592 37 kg, standard gravity 9.806 65 m/s2, all exact. The foot is the
 * international one, not the US survey foot.
 */
public enum Unit {
    MICROMETRE("um", Dimension.LENGTH, 1, 1e6),
    MILLIMETRE("mm", Dimension.LENGTH, 1, 1e3),
    CENTIMETRE("cm", Dimension.LENGTH, 1, 100),
    METRE("m", Dimension.LENGTH, 1, 1),
    KILOMETRE("km", Dimension.LENGTH, 1e3, 1),
    INCH("in", Dimension.LENGTH, 254, 1e4),
    FOOT("ft", Dimension.LENGTH, 3048, 1e4),
    YARD("yd", Dimension.LENGTH, 9144, 1e4),

    METRE_PER_SECOND("m/s", Dimension.SPEED, 1, 1),
    METRE_PER_MINUTE("m/min", Dimension.SPEED, 1, 60),
    METRE_PER_HOUR("m/h", Dimension.SPEED, 1, 3600),
    MILLIMETRE_PER_SECOND("mm/s", Dimension.SPEED, 1, 1e3),
    MILLIMETRE_PER_MINUTE("mm/min", Dimension.SPEED, 1, 60e3),
    FOOT_PER_SECOND("ft/s", Dimension.SPEED, 3048, 1e4),
    FOOT_PER_MINUTE("ft/min", Dimension.SPEED, 3048, 60e4),
    FOOT_PER_HOUR("ft/h", Dimension.SPEED, 3048, 3600e4),
    INCH_PER_SECOND("in/s", Dimension.SPEED, 254, 1e4),
    INCH_PER_MINUTE("in/min", Dimension.SPEED, 254, 60e4),

    METRE_PER_SECOND_SQUARED("m/s2", Dimension.ACCELERATION, 1, 1),
    METRE_PER_MINUTE_PER_SECOND("m/min/s", Dimension.ACCELERATION, 1, 60),
    MILLIMETRE_PER_SECOND_SQUARED("mm/s2", Dimension.ACCELERATION, 1, 1e3),
    FOOT_PER_SECOND_SQUARED("ft/s2", Dimension.ACCELERATION, 3048, 1e4),
    FOOT_PER_MINUTE_PER_SECOND("ft/min/s", Dimension.ACCELERATION, 3048, 60e4),
    INCH_PER_SECOND_SQUARED("in/s2", Dimension.ACCELERATION, 254, 1e4),

    MILLISECOND("ms", Dimension.TIME, 1, 1e3),
    SECOND("s", Dimension.TIME, 1, 1),
    MINUTE("min", Dimension.TIME, 60, 1),
    HOUR("h", Dimension.TIME, 3600, 1),
    DAY("d", Dimension.TIME, 86400, 1),

    GRAM("g", Dimension.MASS, 1, 1e3),
    KILOGRAM("kg", Dimension.MASS, 1, 1),
    TONNE("t", Dimension.MASS, 1e3, 1),
    POUND("lb", Dimension.MASS, 45359237, 1e8),
    /** 2000 lb. The bare word "ton" is refused: it may mean this, the long ton or the tonne. */
    SHORT_TON("short ton", Dimension.MASS, 90718474, 1e5),
    /** 2240 lb. */
    LONG_TON("long ton", Dimension.MASS, 10160469088.0, 1e7),

    KILOGRAM_PER_CUBIC_METRE("kg/m3", Dimension.DENSITY, 1, 1),
    GRAM_PER_CUBIC_CENTIMETRE("g/cm3", Dimension.DENSITY, 1e3, 1),
    /** 0.453 592 37 kg over (0.0254 m) cubed. */
    POUND_PER_CUBIC_INCH("lb/in3", Dimension.DENSITY, 45359237e4, 254.0 * 254 * 254),
    /** 0.453 592 37 kg over (0.3048 m) cubed. */
    POUND_PER_CUBIC_FOOT("lb/ft3", Dimension.DENSITY, 45359237e4, 3048.0 * 3048 * 3048),

    PASCAL("Pa", Dimension.STRESS, 1, 1),
    KILOPASCAL("kPa", Dimension.STRESS, 1e3, 1),
    MEGAPASCAL("MPa", Dimension.STRESS, 1e6, 1),
    GIGAPASCAL("GPa", Dimension.STRESS, 1e9, 1),
    /** 0.453 592 37 kg times 9.806 65 m/s2 over (0.0254 m) squared. */
    POUND_PER_SQUARE_INCH("psi", Dimension.STRESS, 45359237.0 * 980665, 254.0 * 254 * 1e5),
    KILOPOUND_PER_SQUARE_INCH("ksi", Dimension.STRESS, 45359237.0 * 980665, 254.0 * 254 * 100),

    NEWTON("N", Dimension.FORCE, 1, 1),
    KILONEWTON("kN", Dimension.FORCE, 1e3, 1),
    /** 0.453 592 37 kg times 9.806 65 m/s2. */
    POUND_FORCE("lbf", Dimension.FORCE, 45359237.0 * 980665, 1e13),

    NEWTON_METRE("N m", Dimension.TORQUE, 1, 1),
    KILONEWTON_METRE("kN m", Dimension.TORQUE, 1e3, 1),
    /** 0.453 592 37 kg times 9.806 65 m/s2 times 0.3048 m, shortened by 40. */
    POUND_FORCE_FOOT("lbf ft", Dimension.TORQUE, 45359237.0 * 196133 * 381, 2.5e15),

    WATT("W", Dimension.POWER, 1, 1),
    KILOWATT("kW", Dimension.POWER, 1e3, 1),
    /** 550 lbf ft/s; its multiplier is rounded to a double. */
    HORSEPOWER("hp", Dimension.POWER, 45359237.0 * 196133 * 381 * 11, 5e13),

    PERCENT("%", Dimension.SHARE, 1, 100),

    KILOGRAM_PER_HOUR("kg/h", Dimension.MASS_RATE, 1, 3600),
    TONNE_PER_HOUR("t/h", Dimension.MASS_RATE, 1e3, 3600),
    POUND_PER_HOUR("lb/h", Dimension.MASS_RATE, 45359237, 3600e8),
    SHORT_TON_PER_HOUR("short ton/h", Dimension.MASS_RATE, 90718474, 3600e5);

    private static final Pattern US_CUSTOMARY = Pattern.compile("(in|ft|yd|lb|short ton|long ton|psi|ksi|lbf|hp)\\b.*");

    private static final Map<String, Unit> BY_SYMBOL =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Unit::symbol, unit -> unit));

    /** A power at the end of a unit. */
    private static final Pattern POWER = Pattern.compile("(?<=/(s|m|in|ft))[23]$");

    private final String symbol;
    private final Dimension dimension;
    private final double multiplier;
    private final double divisor;

    Unit(String symbol, Dimension dimension, double multiplier, double divisor) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.multiplier = multiplier;
        this.divisor = divisor;
    }

    /** As it is read and written, such as {@code m/min}. */
    public String symbol() {
        return symbol;
    }

    /** The symbol as people read it: m/s² for m/s2. */
    public String shown() {
        return raised(symbol);
    }

    /** Powers in the unit at the end of {@code text} raised. */
    public static String raised(String text) {
        Matcher power = POWER.matcher(text);
        return power.find() ? text.substring(0, power.start()) + (power.group().equals("2") ? "²" : "³") : text;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The system that it belongs to; empty for those of time and share, which belong to both. */
    public Optional<UnitSystem> system() {
        if (dimension == Dimension.TIME || dimension == Dimension.SHARE) {
            return Optional.empty();
        }
        return Optional.of(US_CUSTOMARY.matcher(symbol).matches() ? UnitSystem.US_CUSTOMARY : UnitSystem.METRIC);
    }

    /** {@code value} of this unit in the SI unit of its dimension; a share as a number from 0 to 1. */
    public double toSi(double value) {
        if (!Double.isFinite(value)) {
            return value;
        }
        return BigDecimal.valueOf(value)
                .multiply(new BigDecimal(multiplier))
                .divide(new BigDecimal(divisor), MathContext.DECIMAL128)
                .doubleValue();
    }

    /** How many of this unit are {@code si} in the SI unit of its dimension. */
    public double fromSi(double si) {
        return si * divisor / multiplier;
    }

    /** The unit with exactly this symbol; {@code m/s^2} and {@code m/s²} are read as {@code m/s2}. */
    public static Optional<Unit> bySymbol(String symbol) {
        Unit unit = BY_SYMBOL.get(symbol);
        return Optional.ofNullable(unit == null ? BY_SYMBOL.get(plain(symbol)) : unit);
    }

    /** One spelling of powers, of micro and of spaces. */
    static String plain(String symbol) {
        return symbol.strip()
                .replaceAll("\\s+", " ")
                .replace("^", "")
                .replace('²', '2')
                .replace('³', '3')
                .replace('µ', 'u')
                .replace('μ', 'u');
    }
}
