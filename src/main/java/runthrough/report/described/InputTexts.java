package runthrough.report.described;

import runthrough.plant.Distribution;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.UnitSystem;
import runthrough.report.Cell;
import runthrough.report.Value;

/**
 * Numbers of a description in the user's units.
 *
 * @param system those units
 * @param rounding of the numbers
 */
public record InputTexts(UnitSystem system, Rounding rounding) {

    /** Numbers as the user described them: to six digits, so that nothing is rounded that was given. */
    public InputTexts(UnitSystem system) {
        this(system, Rounding.GIVEN);
    }

    /** How quantities of {@code kind} are written whose values go up to {@code greatest} (SI). */
    public Notation notation(Kind kind, double greatest) {
        return rounding == Rounding.GIVEN
                ? Notation.given(kind, greatest, system)
                : Notation.of(kind, greatest, system);
    }

    /** A quantity (SI). */
    public Value value(Kind kind, double si) {
        return Value.of(si, notation(kind, si));
    }

    /** A number without a unit. */
    public Value plain(double number) {
        return Value.of(number, Notation.PLAIN.with(rounding));
    }

    /** A quantity (SI); infinity is none that limits. */
    public Cell cell(Kind kind, double si) {
        return Double.isInfinite(si) ? Cell.of("no limit") : Cell.of(value(kind, si));
    }

    /** A random quantity: its value where it is constant, else its distribution in words. */
    public Cell cell(Kind kind, Distribution distribution) {
        return distribution.isConstant()
                ? Cell.of(value(kind, distribution.mean()))
                : Cell.of(DistributionText.of(distribution, kind, this));
    }

    /** An acceleration (m/s2); infinity is a speed that changes at once. */
    public Cell acceleration(double si) {
        return Double.isInfinite(si) ? Cell.of("at once") : Cell.of(value(Kind.ACCELERATION, si));
    }

    /** A quantity (SI) in a sentence. */
    public String text(Kind kind, double si) {
        return cell(kind, si).text();
    }
}
