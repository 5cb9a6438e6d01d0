package runthrough.report.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers of checks as text, with the digits that the tolerance gives a meaning to and one more. The last bits, in which
 * machines may differ, are never shown.
 */
final class Digits {
    private static final int OF_ERRORS = 2;
    /** Powers of ten outside of which a number is written with one. */
    private static final int SMALL = -4;

    private static final int LARGE = 7;
    /** A double has not more. */
    private static final MathContext ALL = new MathContext(15, RoundingMode.HALF_UP);

    private Digits() {}

    /** {@code value} beside {@code tolerance}, in the same unit; all its digits where the tolerance is 0. */
    static String value(double value, double tolerance) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "none" : value > 0 ? "unlimited" : "-unlimited";
        }
        BigDecimal number = BigDecimal.valueOf(value);
        number = tolerance > 0 ? rounded(number, power(tolerance) - 1) : number;
        return number.signum() == 0 ? "0" : plain(number.round(ALL));
    }

    /** An error beside its {@code tolerance}: what is below the digits shown of its value is only said to be so. */
    static String error(double error, double tolerance) {
        if (!Double.isFinite(error)) {
            return "none";
        }
        if (tolerance == 0) {
            return text(error);
        }
        int power = power(tolerance) - 1;
        BigDecimal rounded = rounded(BigDecimal.valueOf(error), power);
        return rounded.signum() == 0 ? "below 1e" + power : text(rounded.doubleValue());
    }

    /** A tolerance or an error, to two digits. */
    static String text(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(OF_ERRORS, RoundingMode.HALF_UP));
        int power = rounded.precision() - rounded.scale() - 1;
        return power < SMALL || power > LARGE ? plain(rounded.scaleByPowerOfTen(-power)) + "e" + power : plain(rounded);
    }

    /** The power of ten of the first digit. */
    static int power(double value) {
        BigDecimal exact = BigDecimal.valueOf(value);
        return exact.precision() - exact.scale() - 1;
    }

    private static BigDecimal rounded(BigDecimal number, int power) {
        return number.scale() > -power ? number.setScale(-power, RoundingMode.HALF_UP) : number;
    }

    private static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0).toPlainString() : stripped.toPlainString();
    }
}
