package runthrough.plant;

import java.util.ArrayList;
import java.util.List;
import runthrough.plant.OutOfRangeException.Fault;
import runthrough.quantity.Numbers;

/**
 * Range checks of the numbers of one record, which {@link #refuse} ends: it names all that are out of their ranges. Each is
 * written so that NaN fails. Rule CHECK-1.
 */
final class Ranges {
    /** Beyond what any strip line can show. */
    private static final double LARGE = 1e9;

    private static final double SMALL = 1e-9;
    private static final int MANY = 1_000_000;
    private static final int DIGITS = 6;

    /** What is checked, and with it its unit. */
    enum Of {
        LENGTH(" m", "Give a length in metres."),
        SPEED(" m/s", "Give a speed in metres per second."),
        SPEED_LIMIT(" m/s", "Give it in m/s, infinite for no limit."),
        ALLOWANCE(" m", "Give it in metres, infinite where overfull is not counted."),
        ACCELERATION(" m/s2", "Give it in m/s2, infinite for a speed that changes at once."),
        TIME(" s", "Give a time in seconds."),
        DENSITY(" kg/m3", "Give a density in kg/m3."),
        STRESS(" Pa", "Give a stress in pascal."),
        SHARE("", "Give a share of 1, such as 0.02 for 2 %."),
        COUNT("", "Give a whole number."),
        NUMBER("", "Give a value in its range.");

        private final String unit;
        private final String remedy;

        Of(String unit, String remedy) {
            this.unit = unit;
            this.remedy = remedy;
        }

        String text(double value) {
            return number(value) + unit;
        }
    }

    private final String part;
    private final List<Fault> faults = new ArrayList<>(0);

    private Ranges(String part) {
        this.part = part;
    }

    /** Checks of a record that describes {@code part} of a line; empty for one that may belong to any part. */
    static Ranges of(String part) {
        return new Ranges(part);
    }

    /** More than 0, may be infinite. */
    Ranges positive(String key, double value, Of of) {
        return check(value > 0, key, value, of, "must be more than 0", SMALL, Double.POSITIVE_INFINITY);
    }

    Ranges finitePositive(String key, double value, Of of) {
        boolean isAllowed = value > 0 && value < Double.POSITIVE_INFINITY;
        return check(isAllowed, key, value, of, "must be more than 0 and finite", SMALL, LARGE);
    }

    Ranges notNegative(String key, double value, Of of) {
        boolean isAllowed = value >= 0 && value < Double.POSITIVE_INFINITY;
        return check(isAllowed, key, value, of, "must be 0 or more and finite", 0, LARGE);
    }

    /**
     * What makes an accumulator hold strip. A line needs more than 0; 0 itself is taken here, since a search may come down to it,
     * and refused of a line by rule CHECK-9.
     */
    Ranges holding(String key, double value) {
        boolean isAllowed = value >= 0 && value < Double.POSITIVE_INFINITY;
        return check(isAllowed, key, value, Of.LENGTH, "must be more than 0 and finite", 0, LARGE);
    }

    /** 0 or more, may be infinite. */
    Ranges notBelowZero(String key, double value, Of of) {
        return check(value >= 0, key, value, of, "must be 0 or more", 0, Double.POSITIVE_INFINITY);
    }

    /** A threshold that may be left to its default (NaN), but must be finite and not negative when given. */
    Ranges optionalLevel(String key, double value) {
        return Double.isNaN(value) ? this : notNegative(key, value, Of.LENGTH);
    }

    /** From {@code least} on, which is {@code limit}; 0 or more where that is out of its own range. */
    Ranges from(double least, String limit, String key, double value, Of of) {
        if (!(least >= 0)) {
            return notNegative(key, value, of);
        }
        boolean isAllowed = value >= least && value < Double.POSITIVE_INFINITY;
        return check(
                isAllowed, key, value, of, "must be the " + limit + ", " + of.text(least) + ", or more", least, LARGE);
    }

    /** More than {@code least}, which is {@code limit}; more than 0 where that is out of its own range. */
    Ranges above(double least, String limit, String key, double value, Of of) {
        if (!(least > 0)) {
            return finitePositive(key, value, of);
        }
        boolean isAllowed = value > least && value < Double.POSITIVE_INFINITY;
        return check(
                isAllowed, key, value, of, "must be more than the " + limit + ", " + of.text(least), 2 * least, LARGE);
    }

    /** More than 0 and at most {@code greatest}. */
    Ranges upTo(double greatest, String key, double value, Of of) {
        String rule = "must be more than 0 and at most " + of.text(greatest);
        return check(value > 0 && value <= greatest, key, value, of, rule, SMALL, greatest);
    }

    Ranges atLeastOne(String key, int value) {
        return check(value >= 1, key, value, Of.COUNT, "must be 1 or more", 1, MANY);
    }

    Ranges count(String key, int value) {
        return check(value >= 0, key, value, Of.COUNT, "must be 0 or more", 0, MANY);
    }

    /** From 0 to 1. */
    Ranges share(String key, double value) {
        return check(value >= 0 && value <= 1, key, value, Of.SHARE, "must be from 0 to 1", 0, 1);
    }

    /** From 0 on and below 1. */
    Ranges shareBelowOne(String key, double value) {
        return check(value >= 0 && value < 1, key, value, Of.SHARE, "must be 0 or more and below 1", 0, 0.5);
    }

    /** More than 0 and at most 1. */
    Ranges positiveShare(String key, double value) {
        return check(value > 0 && value <= 1, key, value, Of.SHARE, "must be more than 0 and at most 1", SMALL, 1);
    }

    private Ranges check(boolean isAllowed, String key, double value, Of of, String rule, double least, double most) {
        if (!isAllowed) {
            // What cannot change its speed fast demands much of the rest of the line; of all else it is much that does.
            boolean isMildWhenLarge = of == Of.ACCELERATION;
            faults.add(new Fault(
                    part,
                    key,
                    of.text(value) + "; " + rule,
                    of.remedy,
                    isMildWhenLarge ? most : least,
                    isMildWhenLarge ? least : most));
        }
        return this;
    }

    /** In digits that a reader takes in, and as the language writes it where no line shows such a number. */
    private static String number(double value) {
        boolean isUsual = value == 0 || (Math.abs(value) >= SMALL && Math.abs(value) < LARGE);
        return isUsual ? Numbers.text(value, DIGITS) : String.valueOf(value);
    }

    /** Ends the checks of a record. */
    void refuse() {
        if (!faults.isEmpty()) {
            throw new OutOfRangeException(faults);
        }
    }
}
