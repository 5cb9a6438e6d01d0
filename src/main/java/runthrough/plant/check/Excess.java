package runthrough.plant.check;

/** What is more than another number, and not by the last digits of what was worked out. */
final class Excess {
    /** Products and sums of a few numbers of a line agree with what they are on paper to far less than this part of them. */
    private static final double ROUNDING = 1e-12;

    private Excess() {}

    /** Whether {@code one} is more than {@code other}. */
    static boolean isMore(double one, double other) {
        return one > other && !isEqual(one, other);
    }

    /** Whether {@code one} is more than {@code other} or equal to it on paper. */
    static boolean isAtLeast(double one, double other) {
        return one > other || isEqual(one, other);
    }

    /** Whether they are equal on paper. */
    static boolean isEqual(double one, double other) {
        return one == other || Math.abs(one - other) <= ROUNDING * Math.min(Math.abs(one), Math.abs(other));
    }
}
