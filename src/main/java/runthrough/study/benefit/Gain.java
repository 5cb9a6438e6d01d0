package runthrough.study.benefit;

import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Interval;

/**
 * What is gained in a year, in the unit of what is counted; negative for a loss.
 *
 * @param mean best guess
 * @param low end of its interval; the mean where nothing is random
 * @param high end of its interval; the mean where nothing is random
 */
public record Gain(double mean, double low, double high) {
    static final Gain NONE = new Gain(0, 0, 0);

    /** A gain where more is better. */
    static Gain ofMore(Difference difference) {
        return new Gain(
                difference.mean(),
                difference.interval().map(Interval::low).orElse(difference.mean()),
                difference.interval().map(Interval::high).orElse(difference.mean()));
    }

    /** A gain where less is better. */
    static Gain ofLess(Difference difference) {
        Gain more = ofMore(difference);
        return new Gain(0 - more.mean, 0 - more.high, 0 - more.low);
    }

    /** Half the width of its interval; 0 where it is certain. */
    public double halfWidth() {
        return (high - low) / 2;
    }

    /** The same counted otherwise, {@code factor >= 0}. */
    public Gain times(double factor) {
        return new Gain(factor * mean, factor * low, factor * high);
    }

    /** What is left when {@code cost}, which is certain, goes off. */
    public Gain less(double cost) {
        return new Gain(mean - cost, low - cost, high - cost);
    }
}
