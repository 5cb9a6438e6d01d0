package runthrough.report.uncertainty;

/**
 * How well share and capacity are to be known.
 *
 * @param share half the width of its interval, as a share of coil changes, {@code > 0}
 * @param capacity half the width of its interval, as a part of the capacity, {@code > 0}
 */
public record UncertaintyPrecision(double share, double capacity) {

    /** What is usual: one coil change in a hundred, and a twentieth of the capacity. */
    public static final UncertaintyPrecision USUAL = new UncertaintyPrecision(0.01, 0.05);

    public UncertaintyPrecision {
        if (!(share > 0 && capacity > 0)) {
            throw new IllegalArgumentException("precision = " + share + " and " + capacity + "; must be more than 0");
        }
    }
}
