package runthrough.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** Numbers as text for people: always a decimal point, the same on every machine. */
public final class Numbers {

    /** From this on a number has its thousands apart, and a result is rounded before the point, too. */
    static final double FIVE_DIGITS = 10_000;

    private static final int DIGITS = 4;
    private static final int FEW = 3;
    /** Closer than this to nothing or to all counts as rounding of the computer's own. */
    private static final double NEGLIGIBLE_SHARE = 1e-12;

    private static final MathContext CERTAIN = new MathContext(8, RoundingMode.HALF_UP);
    private static final Pattern NEEDS_THOUSANDS = Pattern.compile("\\d{5}");
    /** Within a whole number, before its last three, six ... digits. */
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d)(?=(\\d{3})+$)");

    private Numbers() {}

    /**
     * To four significant digits, whole digits always kept, trailing zeros dropped: 12345.6 is "12346", 0.75 is "0.75".
     * Not a number is "n/a", infinity is "unlimited".
     */
    public static String text(double value) {
        return text(value, DIGITS);
    }

    /** The same, rounded to the side that {@code mode} says. */
    static String text(double value, RoundingMode mode) {
        return text(value, DIGITS, mode);
    }

    /** The number that {@link #text(double)} writes. */
    public static double rounded(double value) {
        return rounded(value, DIGITS);
    }

    /** The number that {@link #text(double, int)} writes. */
    public static double rounded(double value, int digits) {
        return Double.isFinite(value)
                ? rounded(decimal(value, RoundingMode.HALF_UP), digits, RoundingMode.HALF_UP)
                        .doubleValue()
                : value;
    }

    /** To {@code digits} significant digits, otherwise like {@link #text(double)}. */
    public static String text(double value, int digits) {
        return text(value, digits, RoundingMode.HALF_UP);
    }

    /** The same, rounded to the side that {@code mode} says. */
    public static String text(double value, int digits, RoundingMode mode) {
        return finiteOr(value, () -> trimmed(rounded(decimal(value, mode), digits, mode)));
    }

    /** What is to be rounded by {@code mode}: to one side without the computer's own error, which would make 89.9 of 90. */
    static BigDecimal decimal(double value, RoundingMode mode) {
        BigDecimal exact = BigDecimal.valueOf(value);
        return mode == RoundingMode.HALF_UP ? exact : exact.round(CERTAIN);
    }

    /** To {@code digits} significant digits, whole digits always kept. */
    private static BigDecimal rounded(BigDecimal exact, int digits, RoundingMode mode) {
        BigDecimal rounded = exact.round(new MathContext(digits, mode));
        return rounded.scale() < 0 ? exact.setScale(0, mode) : rounded;
    }

    /** With exactly {@code decimals} digits behind the point, for columns. */
    public static String fixed(double value, int decimals) {
        return fixed(value, decimals, RoundingMode.HALF_UP);
    }

    /** The same, rounded to the side that {@code mode} says. */
    static String fixed(double value, int decimals, RoundingMode mode) {
        return finiteOr(
                value, () -> decimal(value, mode).setScale(decimals, mode).toPlainString());
    }

    /**
     * The power of ten of the last digit that half the width of an interval leaves certain: that of the width's first digit, or,
     * so that the ends of a narrow interval do not look the same, of its second where the first is less than 3.
     *
     * @param halfWidth {@code > 0}
     */
    public static int lastCertain(double halfWidth) {
        int power = (int) Math.floor(Math.log10(halfWidth));
        return halfWidth / Math.pow(10, power) < FEW ? power - 1 : power;
    }

    /** A whole number, its thousands apart. */
    public static String count(long number) {
        return thousandsApart(Long.toString(number));
    }

    /**
     * A written number with its thousands apart from five digits before the point on (NIST SP 811, 2008, section 10.5.3). Who
     * writes it into a line that may break keeps it in one piece.
     */
    public static String thousandsApart(String number) {
        int point = number.indexOf('.');
        String whole = point < 0 ? number : number.substring(0, point);
        return NEEDS_THOUSANDS.matcher(whole).find()
                ? THOUSANDS.matcher(whole).replaceAll(" ") + number.substring(whole.length())
                : number;
    }

    /** Whether {@code value} is written as 0 to the digits that half the width of its interval, {@code >= 0}, leaves certain. */
    public static boolean roundsToNothing(double value, double halfWidth) {
        return halfWidth > 0 ? Math.abs(value) < 0.5 * Math.pow(10, Math.min(0, lastCertain(halfWidth))) : value == 0;
    }

    /** With every digit that the number has, without an exponent. */
    public static String plain(double value) {
        String digits = Double.toString(value);
        if (value == 0 || !Double.isFinite(value) || digits.indexOf('E') >= 0) {
            return finiteOr(value, () -> trimmed(BigDecimal.valueOf(value)));
        }
        // Files hold millions of numbers: what has no exponent needs no more than its last zero taken off.
        return digits.endsWith(".0") ? digits.substring(0, digits.length() - 2) : digits;
    }

    /** Percent of a share from 0 to 1, with as many digits as it takes not to call a share "0" or "100" that is neither. */
    static String percent(double share) {
        double percent = 100 * share;
        boolean isPlainlyNone = Math.abs(share) < NEGLIGIBLE_SHARE;
        boolean isPlainlyAll = Math.abs(1 - share) < NEGLIGIBLE_SHARE;
        if (isPlainlyNone || isPlainlyAll || !(share > 0.9 && share < 1)) {
            return isPlainlyNone ? "0" : isPlainlyAll ? "100" : text(percent, DIGITS);
        }
        // 99.996 needs its own digits: those of what is missing to 100.
        int decimals = Math.max(1, 1 - (int) Math.floor(Math.log10(100 - percent)));
        BigDecimal rounded = BigDecimal.valueOf(percent).setScale(decimals, RoundingMode.HALF_UP);
        return trimmed(rounded);
    }

    private static String trimmed(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.toBigInteger().toString() : stripped.toPlainString();
    }

    private static String finiteOr(double value, Supplier<String> text) {
        if (Double.isNaN(value)) {
            return "n/a";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "unlimited" : "-unlimited";
        }
        return text.get();
    }
}
