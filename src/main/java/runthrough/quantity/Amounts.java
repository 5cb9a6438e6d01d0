package runthrough.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.FieldPosition;
import java.util.Locale;

/**
 * Amounts that may be large, such as money or a year's output, as text for people: rounded to the digits that mean something,
 * also before the point, with thousands apart ({@link Numbers#thousandsApart}).
 */
public final class Amounts {
    private static final int DIGITS = 3;

    private Amounts() {}

    /** To three digits: 1612345 is "1 610 000". */
    public static String text(double value) {
        return text(value, 0, RoundingMode.HALF_UP);
    }

    /**
     * To as many digits as half the width of its interval leaves certain, see {@link Numbers#lastCertain}: 1612345 with a
     * half-width of 4100 is "1 612 000". To three digits where the width is 0.
     */
    public static String text(double value, double halfWidth) {
        return text(value, halfWidth, RoundingMode.HALF_UP);
    }

    /** The same, rounded to the side that {@code mode} says. */
    static String text(double value, double halfWidth, RoundingMode mode) {
        if (value == 0 || !Double.isFinite(value)) {
            return Numbers.text(value);
        }
        return halfWidth > 0 && Double.isFinite(halfWidth)
                ? rounded(value, Numbers.lastCertain(halfWidth), mode)
                : rounded(value, (int) Math.floor(Math.log10(Math.abs(value))) - DIGITS + 1, mode);
    }

    /** With every digit that was given. */
    public static String exact(double value) {
        return Numbers.thousandsApart(Numbers.plain(value));
    }

    /** How numbers look along an axis: their thousands apart as in texts. */
    public static DecimalFormat grouped() {
        return new Axis();
    }

    /** Rounded to a multiple of ten to the {@code power}. */
    private static String rounded(double value, int power, RoundingMode mode) {
        BigDecimal rounded = Numbers.decimal(value, mode).setScale(-power, mode);
        return rounded.signum() == 0 ? "0" : Numbers.thousandsApart(rounded.toPlainString());
    }

    private static final class Axis extends DecimalFormat {
        private static final long serialVersionUID = 1;

        Axis() {
            super("#,##0.######", symbols());
        }

        private static DecimalFormatSymbols symbols() {
            DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
            symbols.setGroupingSeparator(' ');
            return symbols;
        }

        @Override
        public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
            setGroupingUsed(Math.abs(number) >= Numbers.FIVE_DIGITS);
            return super.format(number, to, position);
        }
    }
}
