package runthrough.study.statistics;

/**
 * A confidence interval: of 95 %, where what it belongs to does not say otherwise.
 *
 * @param low lower end, in the unit of what is estimated
 * @param high upper end, {@code > low}
 * @param method how it was made
 */
public record Interval(double low, double high, Method method) {

    /** The confidence of every interval, or of all together where several are given at once. */
    public static final double CONFIDENCE = 0.95;

    public Interval {
        if (!(low < high)) {
            throw new IllegalArgumentException("interval from " + low + " to " + high + "; must have a width");
        }
    }

    /** Whether {@code value} lies between the ends or on one of them. */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** Half of the distance between the ends. */
    public double halfWidth() {
        return (high - low) / 2;
    }

    /** The same in another unit: both ends {@code factor} times, {@code factor > 0}. */
    public Interval times(double factor) {
        return new Interval(factor * low, factor * high, method);
    }

    /** How an interval was made. */
    public enum Method {
        /** Student's t over independent replications. */
        STUDENT_T,
        /** Wilson's score interval of a share, from the counts of all replications pooled. */
        WILSON,
        /** Nothing was seen in n trials: from zero to 3/n, one-sided, from the counts of all replications pooled. */
        RULE_OF_THREE,
        /** Few events: by their count and how much their effects differ, with Student's t for all else. */
        FEW_EVENTS,
        /** A difference of two shares, from the intervals of both as if they were independent. */
        SQUARE_AND_ADD
    }
}
