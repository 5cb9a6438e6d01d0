package runthrough.plant;

import java.math.BigDecimal;
import java.math.MathContext;
import runthrough.quantity.UnitSystem;

/** Numbers in messages: SI in, text in the user's units out. */
record Wording(UnitSystem units) {
    private static final double FOOT = 0.3048;
    private static final MathContext DIGITS = new MathContext(4);

    /** A length of strip (m). */
    String length(double metres) {
        return metric() ? number(metres) + " m" : number(metres / FOOT) + " ft";
    }

    /** A strip speed (m/s). */
    String speed(double metresPerSecond) {
        return metric() ? number(metresPerSecond * 60) + " m/min" : number(metresPerSecond * 60 / FOOT) + " ft/min";
    }

    /** A time (s). */
    String time(double seconds) {
        return number(seconds) + " s";
    }

    /** A share of 1. */
    String share(double share) {
        return number(share * 100) + " %";
    }

    /** A count. */
    String count(long count) {
        return Long.toString(count);
    }

    /** The reciprocal of a share, for "1 in ...": two digits are enough. */
    String oneIn(double share) {
        return new BigDecimal(Math.max(1, 1 / share)).round(new MathContext(2)).toPlainString();
    }

    private boolean metric() {
        return units == UnitSystem.METRIC;
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return value > 0 ? "no limit" : Double.toString(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
