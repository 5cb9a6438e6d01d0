package runthrough.quantity;

import java.math.RoundingMode;
import java.util.List;

/**
 * Shows SI values in the units that the user reads. Every number that people see goes through here.
 *
 * <p>{@link #text} is for sentences: it picks a unit to suit the size ("95 s", "12.5 min"). For a column or an axis, where
 * all values share a unit, take {@link #unit(Kind)} or {@link #unitFor(Kind, double)} once and write {@link
 * #number(double, Unit)}, or convert with {@link Unit#fromSi}.
 *
 * @param system the units that the user asked for
 */
public record Units(UnitSystem system) {

    /** A larger unit is taken from this many of it on, so that 100 s stay seconds and 150 s are 2.5 min. */
    private static final double ENOUGH_FOR_LARGER_UNIT = 2;

    public static Units of(UnitSystem system) {
        return new Units(system);
    }

    /** The usual unit of {@code kind}. */
    public Unit unit(Kind kind) {
        return kind.units(system).get(0);
    }

    /** The unit that suits values of up to {@code greatest} (SI). */
    public Unit unitFor(Kind kind, double greatest) {
        List<Unit> units = kind.units(system);
        Unit suited = units.get(0);
        for (Unit larger : units) {
            if (Math.abs(larger.fromSi(greatest)) >= ENOUGH_FOR_LARGER_UNIT) {
                suited = larger;
            }
        }
        return suited;
    }

    /** Symbol of the usual unit. */
    public String label(Kind kind) {
        return unit(kind).symbol();
    }

    /** {@code si} in the usual unit of {@code kind}. */
    public double value(Kind kind, double si) {
        return unit(kind).fromSi(si);
    }

    /** {@code si} as number and unit, the unit suited to its size; "n/a" for NaN, "unlimited" for infinity. */
    public String text(Kind kind, double si) {
        return text(si, unitFor(kind, si));
    }

    /** The same of what a value is held against, rounded to the side that {@code mode} says; not of a share. */
    public String bound(Kind kind, double si, RoundingMode mode) {
        Unit unit = unitFor(kind, si);
        return Numbers.text(unit.fromSi(si), mode) + (Double.isFinite(si) ? " " + unit.symbol() : "");
    }

    /** {@code si} as number and {@code unit}. */
    public String text(double si, Unit unit) {
        String number = number(si, unit);
        return Double.isFinite(si) ? number + " " + unit.symbol() : number;
    }

    /** {@code si} as number in the usual unit of {@code kind}, without the unit. */
    public String number(Kind kind, double si) {
        return number(si, unit(kind));
    }

    /** {@code si} as number of {@code unit}, without the unit. */
    public String number(double si, Unit unit) {
        return unit == Unit.PERCENT ? Numbers.percent(si) : Numbers.text(unit.fromSi(si));
    }

    /** {@code si} as number of {@code unit} with a given number of decimals, without the unit: for columns. */
    public String fixed(double si, Unit unit, int decimals) {
        return Numbers.fixed(unit.fromSi(si), decimals);
    }
}
