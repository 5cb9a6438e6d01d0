package runthrough.plant.check;

import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;

/** Numbers in messages: SI in, text in the user's units out. */
record Wording(Units units) {
    private static final double MICROMETRE = 1e-6;

    static Wording in(UnitSystem system) {
        return new Wording(Units.of(system));
    }

    /** A length of strip (m); less than a micrometre is rounding, not strip. */
    String length(double metres) {
        return units.text(Kind.LENGTH, Math.rint(metres / MICROMETRE) * MICROMETRE);
    }

    /** Strip thicknesses (m) from {@code least} to {@code greatest}. */
    String thicknesses(double least, double greatest) {
        String from = units.text(Kind.THICKNESS, least);
        return least == greatest ? from : from + " to " + units.text(Kind.THICKNESS, greatest);
    }

    /** A strip speed (m/s). */
    String speed(double metresPerSecond) {
        return units.text(Kind.SPEED, metresPerSecond);
    }

    /** A time (s). */
    String time(double seconds) {
        return units.text(Kind.TIME, seconds);
    }

    /** A share of 1. */
    String share(double share) {
        return units.text(Kind.SHARE, share);
    }

    /** A count. */
    String count(long count) {
        return Long.toString(count);
    }

    /** The reciprocal of a share, for "1 in ...": two digits are enough. */
    String oneIn(double share) {
        return Numbers.text(Math.max(1, 1 / share), 2);
    }
}
