package runthrough.scenario.grammar;

import runthrough.plant.check.StandIn;
import runthrough.quantity.Dimension;
import runthrough.quantity.Notation;

/**
 * Which numbers are allowed. Bounds are SI, shares from 0 to 1.
 *
 * @param least lower bound
 * @param leastIncluded whether the lower bound itself is allowed
 * @param greatest upper bound, infinite for none
 * @param greatestIncluded whether the upper bound itself is allowed
 */
public record Range(double least, boolean leastIncluded, double greatest, boolean greatestIncluded) {

    public static final Range POSITIVE = new Range(0, false, Double.POSITIVE_INFINITY, false);
    public static final Range NOT_NEGATIVE = new Range(0, true, Double.POSITIVE_INFINITY, false);
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY, false);
    /** From 0 to 1, both allowed. */
    public static final Range SHARE = new Range(0, true, 1, true);
    /** From 0, allowed, to 1, not allowed. */
    public static final Range BELOW_ONE = new Range(0, true, 1, false);
    /** From 0, not allowed, to 1, allowed. */
    public static final Range POSITIVE_SHARE = new Range(0, false, 1, true);

    /** Whether {@code value} is allowed; NaN never is. */
    boolean allows(double value) {
        boolean highEnough = leastIncluded ? value >= least : value > least;
        boolean lowEnough = greatestIncluded ? value <= greatest : value < greatest;
        return highEnough && lowEnough;
    }

    /** In words, with {@code unit} behind each bound: "more than 0 m". */
    String words(String unit, double unitsPerSi) {
        if (this.equals(ANY)) {
            return "any finite value";
        }
        String low = (leastIncluded ? "" : "more than ")
                + bound(least, unit, unitsPerSi, Notation.PLAIN.atLeast())
                + (leastIncluded ? " or more" : "");
        if (greatest == Double.POSITIVE_INFINITY) {
            return low;
        }
        String from = leastIncluded ? "at least " + bound(least, unit, unitsPerSi, Notation.PLAIN.atLeast()) : low;
        return from + " and " + (greatestIncluded ? "at most " : "less than ")
                + bound(greatest, unit, unitsPerSi, Notation.PLAIN.atMost());
    }

    /** A bound that was calculated is rounded to the side that is allowed. */
    private static String bound(double value, String unit, double unitsPerSi, Notation notation) {
        return notation.number(value * unitsPerSi) + (unit.isEmpty() ? "" : " " + unit);
    }

    /**
     * A value that is allowed, near the end that demands little of the rest of the line or near the other.
     *
     * @param smallest that is allowed beside 0
     * @param largest that is allowed
     */
    double standIn(StandIn standIn, double smallest, double largest) {
        if (standIn == StandIn.HARSH) {
            return greatestIncluded ? greatest : Math.min(largest, greatest * (1 - smallest));
        }
        return leastIncluded ? least : Math.max(least * (1 + smallest), smallest);
    }

    /** Largest value (SI) of each dimension that any strip line can show: beyond it a unit or a zero has slipped. */
    static double largest(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> 1e8;
            case SPEED -> 1e4;
            case ACCELERATION -> 1e12;
            case TIME -> 1e10;
            case MASS, MASS_RATE -> 1e10;
            case DENSITY -> 1e6;
            case STRESS -> 1e15;
            case FORCE, TORQUE, POWER -> 1e12;
            case SHARE -> 1e3;
        };
    }
}
