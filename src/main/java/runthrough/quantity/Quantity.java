package runthrough.quantity;

/**
 * A number with its unit.
 *
 * @param value how many of the unit, finite
 * @param unit what is counted
 */
public record Quantity(double value, Unit unit) implements Reading {

    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value = " + value + "; must be finite");
        }
    }

    /** In the SI unit of its dimension. */
    public double si() {
        return unit.toSi(value);
    }

    /** As a user would write it: the number in full, and the unit. */
    @Override
    public String toString() {
        return Numbers.plain(value) + " " + unit.symbol();
    }
}
