package runthrough.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** To how many digits a number is rounded when it is written, by what it is. */
public enum Rounding {
    /** A result: the digits that half the width of its interval leaves certain, else three; up to 9999 all before the point. */
    CERTAIN {
        @Override
        String text(double value, double half, RoundingMode mode) {
            if (Math.abs(value) >= Numbers.FIVE_DIGITS) {
                return Amounts.text(value, half, mode);
            }
            return half > 0 && value != 0 && Double.isFinite(half)
                    ? Numbers.fixed(value, Math.max(0, -Numbers.lastCertain(half)), mode)
                    : Numbers.text(value, FEW, mode);
        }
    },
    /** A time in seconds as minutes and seconds: whole seconds, or the decimals that the interval leaves certain. */
    CLOCK {
        @Override
        String text(double value, double half, RoundingMode mode) {
            boolean hasInterval = half > 0 && Double.isFinite(half);
            int decimals = hasInterval ? Math.max(0, -Numbers.lastCertain(half)) : 0;
            return clock(Numbers.decimal(value, mode).setScale(decimals, mode));
        }
    },
    /** A time in seconds that the user gave, as minutes and seconds: to six digits, as people give them. */
    GIVEN_CLOCK {
        @Override
        String text(double value, double half, RoundingMode mode) {
            BigDecimal given = BigDecimal.valueOf(Numbers.rounded(value, MANY)).stripTrailingZeros();
            return clock(given.setScale(Math.max(0, given.scale()), RoundingMode.UNNECESSARY));
        }
    },
    /** A value to be set, which was found by trying round steps: to five digits, so that what is written is what was tried. */
    SETTING {
        @Override
        String text(double value, double half, RoundingMode mode) {
            return Numbers.thousandsApart(Numbers.text(value, FINE, mode));
        }
    },
    /** A number as the user described it: to six digits, so that nothing is rounded that was given. */
    GIVEN {
        @Override
        String text(double value, double half, RoundingMode mode) {
            return Numbers.thousandsApart(Numbers.text(value, MANY));
        }
    },
    /** A percentage that the user gave: with every digit, but for the computer's own error. */
    GIVEN_SHARE {
        @Override
        String text(double value, double half, RoundingMode mode) {
            return Numbers.text(value, EXACT);
        }
    },
    /** An amount that the user gave, such as a price: with every digit, thousands apart. */
    GIVEN_AMOUNT {
        @Override
        String text(double value, double half, RoundingMode mode) {
            return Amounts.exact(value);
        }
    },
    /** An amount that may be large, such as money or a year's output: as a result, but rounded before the point, too. */
    AMOUNT {
        @Override
        String text(double value, double half, RoundingMode mode) {
            return Amounts.text(value, half);
        }
    },
    /** A probability of a test: two digits, never written as nothing. */
    PROBABILITY {
        @Override
        String text(double value, double half, RoundingMode mode) {
            return value < LEAST_PROBABILITY ? "< " + LEAST_PROBABILITY : Numbers.text(value, 2);
        }
    },
    /** An information criterion, of which differences of about 1 count: one decimal. */
    CRITERION {
        @Override
        String text(double value, double half, RoundingMode mode) {
            return Numbers.fixed(value, 1);
        }
    },
    /** A correlation: two decimals. */
    CORRELATION {
        @Override
        String text(double value, double half, RoundingMode mode) {
            return Numbers.fixed(value, 2);
        }
    };

    /** A smaller probability is not written out. */
    public static final double LEAST_PROBABILITY = 0.001;

    private static final int FEW = 3;
    private static final int FINE = 5;
    private static final int MANY = 6;
    private static final int EXACT = 12;

    /** A time in seconds as minutes and seconds. */
    private static String clock(BigDecimal seconds) {
        BigDecimal[] parts = seconds.abs().divideAndRemainder(BigDecimal.valueOf(60));
        String rest = parts[1].toPlainString();
        boolean isShort = parts[1].compareTo(BigDecimal.TEN) < 0;
        return (seconds.signum() < 0 ? "-" : "") + parts[0].toBigInteger() + ":" + (isShort ? "0" : "") + rest;
    }

    /**
     * A number in its unit.
     *
     * @param half half the width of its interval in the same unit; 0 for none
     * @param mode to which side a result is rounded
     */
    abstract String text(double value, double half, RoundingMode mode);
}
