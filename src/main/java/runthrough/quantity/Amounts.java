package runthrough.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Amounts that may be large, such as money or a year's output, as text for people: rounded to the digits that mean something,
 * thousands apart by a space that no line breaks at, from five digits on (NIST SP 811, 2008, section 10.5.3).
 */
public final class Amounts {
    static final char GAP = '\u00a0';

    private static final int DIGITS = 3;
    private static final int UNGROUPED = 10_000;

    private Amounts() {}

    /** To three digits: 1612345 is "1 610 000". */
    public static String text(double value) {
        return value == 0 || !Double.isFinite(value)
                ? Numbers.text(value)
                : rounded(value, (int) Math.floor(Math.log10(Math.abs(value))) - DIGITS + 1);
    }

    /**
     * To as many digits as half the width of its interval leaves certain, see {@link Numbers#lastCertain}: 1612345 with a
     * half-width of 4100 is "1 612 000". To three digits where the width is 0.
     */
    public static String text(double value, double halfWidth) {
        if (!(halfWidth > 0) || !Double.isFinite(value) || !Double.isFinite(halfWidth)) {
            return text(value);
        }
        return rounded(value, Numbers.lastCertain(halfWidth));
    }

    /** With every digit that was given. */
    public static String exact(double value) {
        DecimalFormat format = grouped();
        format.setGroupingUsed(Math.abs(value) >= UNGROUPED);
        return Double.isFinite(value) ? format.format(BigDecimal.valueOf(value)) : Numbers.text(value);
    }

    /** How numbers look along an axis of amounts. */
    public static DecimalFormat grouped() {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setGroupingSeparator(GAP);
        return new DecimalFormat("#,##0.######", symbols);
    }

    /** Rounded to a multiple of ten to the {@code power}. */
    private static String rounded(double value, int power) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(-power, RoundingMode.HALF_UP);
        BigDecimal written = rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded;
        if (written.signum() == 0) {
            return "0";
        }
        DecimalFormat format = grouped();
        format.setGroupingUsed(Math.abs(value) >= UNGROUPED);
        format.setMinimumFractionDigits(written.scale());
        format.setMaximumFractionDigits(written.scale());
        return format.format(written);
    }
}
