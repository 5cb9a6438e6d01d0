package runthrough.handcalc;

import runthrough.quantity.Kind;

/**
 * What there is, held against what is needed.
 *
 * @param kind what both are about
 * @param given what there is (SI); may be infinite
 * @param needed what is needed (SI), {@code >= 0}
 */
public record Margin(Kind kind, double given, double needed) {

    /** The margin (SI); a shortfall is negative. */
    public double spare() {
        return given - needed;
    }

    /** How much of what there is is needed: 0 for nothing, 1 for all, more when it is not enough; infinite for all of nothing. */
    public double load() {
        if (needed <= 0) {
            return 0;
        }
        return given > 0 ? needed / given : Double.POSITIVE_INFINITY;
    }

    /** The margin as a share of what there is; a shortfall is negative. */
    public double relative() {
        return 1 - load();
    }

    /** Whether there is enough. */
    public boolean isEnough() {
        return given >= needed;
    }
}
