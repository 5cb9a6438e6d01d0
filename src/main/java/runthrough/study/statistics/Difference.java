package runthrough.study.statistics;

import java.util.Optional;

/**
 * By how much one variant gives more than another, from pairs: replication i of the one held against replication i of the
 * other.
 *
 * @param mean of the differences, in the unit of what is compared; negative when it is less
 * @param pairs that both gave a value, {@code >= 0}
 * @param interval in which the true difference lies; empty where pairs cannot tell, because there is only one or because the
 *     difference was the same in all. Without any difference it is there where events that neither had might make one
 * @param confidence of the interval, in (0, 1): more than 95 % where several differences are given at once
 * @param significance whether it is statistically significant
 */
public record Difference(
        double mean, int pairs, Optional<Interval> interval, double confidence, Significance significance) {

    /** Whether a difference is statistically significant. */
    public enum Significance {
        /** It is there: its whole interval lies on one side of zero; or nothing is random, and it is not zero. */
        SIGNIFICANT,
        /** A difference was seen, which random numbers alone may have caused. */
        NOT_SHOWN,
        /** Both gave the same in every pair. */
        NONE
    }

    /** Between two values of which nothing is random: {@code here} less {@code there}. */
    public static Difference exact(double here, double there, double confidence) {
        boolean same = Pairs.isSame(here, there);
        return new Difference(
                same ? 0 : here - there,
                1,
                Optional.empty(),
                confidence,
                same ? Significance.NONE : Significance.SIGNIFICANT);
    }

    /** Whether it is one between two values of which nothing is random. */
    public boolean isExact() {
        return pairs == 1 && interval.isEmpty() && significance != Significance.NOT_SHOWN;
    }

    /** The same where both gave the same in every pair. */
    Difference asNone() {
        return new Difference(0, pairs, interval, confidence, Significance.NONE);
    }

    /** The same in another unit: all of it {@code factor} times, {@code factor > 0}. */
    public Difference times(double factor) {
        return new Difference(factor * mean, pairs, interval.map(ends -> ends.times(factor)), confidence, significance);
    }
}
