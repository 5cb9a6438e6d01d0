package runthrough.plant.check;

import java.math.RoundingMode;
import java.util.Optional;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;

/**
 * Numbers in messages: SI in, text in the user's units out.
 *
 * @param units of the user; empty for SI, as a program gives the numbers
 */
record Wording(Optional<Units> units) {
    private static final int DIGITS = 6;
    /** A length (m); less is rounding, not strip. */
    static final double MICROMETRE = 1e-6;

    static Wording in(UnitSystem system) {
        return new Wording(Optional.of(Units.of(system)));
    }

    /** In SI, a share as a number from 0 to 1. */
    static Wording si() {
        return new Wording(Optional.empty());
    }

    private String text(Kind kind, double value, String si) {
        return units.map(given -> given.text(kind, value)).orElseGet(() -> text(value, si));
    }

    private String bound(Kind kind, double value, String si, RoundingMode mode) {
        return units.map(given -> given.bound(kind, value, mode))
                .orElseGet(() -> Numbers.text(value, DIGITS, mode) + " " + si);
    }

    private static String text(double value, String si) {
        String number = Numbers.text(value, DIGITS);
        return si.isEmpty() || !Double.isFinite(value) ? number : number + " " + si;
    }

    /** A length of strip (m); less than a micrometre is rounding, not strip. */
    String length(double metres) {
        return text(Kind.LENGTH, strip(metres), "m");
    }

    private static double strip(double metres) {
        return Math.rint(metres / MICROMETRE) * MICROMETRE;
    }

    /** A length of strip (m) that is the most allowed, or too much already: so rounded that whoever gives it is on the safe side. */
    String mostLength(double metres) {
        return bound(Kind.LENGTH, strip(metres), "m", RoundingMode.FLOOR);
    }

    /** The same of the least. */
    String leastLength(double metres) {
        return bound(Kind.LENGTH, strip(metres), "m", RoundingMode.CEILING);
    }

    /** Strip thicknesses (m) from {@code least} to {@code greatest}. */
    String thicknesses(double least, double greatest) {
        String from = text(Kind.THICKNESS, least, "m");
        return least == greatest ? from : from + " to " + text(Kind.THICKNESS, greatest, "m");
    }

    /** A strip speed (m/s). */
    String speed(double metresPerSecond) {
        return text(Kind.SPEED, metresPerSecond, "m/s");
    }

    /** A strip speed (m/s) that is the most allowed, or too much already, rounded like a length. */
    String mostSpeed(double metresPerSecond) {
        return bound(Kind.SPEED, metresPerSecond, "m/s", RoundingMode.FLOOR);
    }

    /** The same of the least. */
    String leastSpeed(double metresPerSecond) {
        return bound(Kind.SPEED, metresPerSecond, "m/s", RoundingMode.CEILING);
    }

    /** A time (s). */
    String time(double seconds) {
        return text(Kind.TIME, seconds, "s");
    }

    /** A share of 1. */
    String share(double share) {
        return text(Kind.SHARE, share, "");
    }

    /** A target, with all digits that were given. */
    String target(double share) {
        return units.isPresent() ? Notation.GIVEN_SHARE.text(share) : Numbers.plain(share);
    }

    /** A share that is about right: two digits. */
    String roundShare(double share) {
        return share(Double.parseDouble(Numbers.text(share, 2)));
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
