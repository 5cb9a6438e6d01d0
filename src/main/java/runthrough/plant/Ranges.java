package runthrough.plant;

/** Range checks of the description's records; each is written so that NaN fails. Rule CHECK-1. */
final class Ranges {

    private Ranges() {}

    static double positive(String what, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(what + " = " + value + "; must be more than 0");
        }
        return value;
    }

    static double finitePositive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " = " + value + "; must be more than 0 and finite");
        }
        return value;
    }

    static double notNegative(String what, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " = " + value + "; must be 0 or more and finite");
        }
        return value;
    }

    static int atLeastOne(String what, int value) {
        if (value < 1) {
            throw new IllegalArgumentException(what + " = " + value + "; must be 1 or more");
        }
        return value;
    }

    static double share(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " = " + value + "; must be from 0 to 1");
        }
        return value;
    }

    static double windingFactor(double value) {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException("winding factor = " + value + "; must be more than 0 and at most 1");
        }
        return value;
    }

    /** A threshold that may be left to its default (NaN), but must be finite and not negative when given. */
    static double optionalLevel(String what, double value) {
        if (!Double.isNaN(value)) {
            notNegative(what, value);
        }
        return value;
    }
}
