package runthrough.study;

import java.util.Optional;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Wilson;

/**
 * Holds the share of coil changes run through against the target.
 *
 * <p>Rule REPORT-16.
 *
 * @param target share asked for, in (0, 1]
 * @param share what was seen
 * @param trials coil changes that it was seen in
 * @param failures how many of them did not run through
 * @param chance whether anything is left to chance
 */
record TargetTest(double target, Estimate share, long trials, long failures, boolean chance) {

    /** Whether the target is met. One failure is enough to miss a target of 1. */
    Answer answer() {
        if (!chance) {
            return seen() >= target ? Answer.MEETS : Answer.MISSES;
        }
        if (target == 1 && failures > 0) {
            return Answer.MISSES;
        }
        Interval interval = interval();
        if (interval.low() >= target) {
            return Answer.MEETS;
        }
        return interval.high() < target ? Answer.MISSES : Answer.UNDECIDED;
    }

    /** How many coil changes would tell. */
    Verdict.Resolution resolution() {
        Optional<Long> leastToShow = chance ? whole(Wilson.trialsToTell(1, target)) : Optional.empty();
        Optional<Long> toDecide = answer() == Answer.UNDECIDED ? whole(trialsToDecide()) : Optional.empty();
        return new Verdict.Resolution(leastToShow, toDecide.map(n -> Math.max(n, trials + 1)));
    }

    /** Both kinds of interval narrow with the square root of the trials; what they say of spread is kept. */
    private double trialsToDecide() {
        double gap = target - seen();
        if (gap == 0) {
            return Double.POSITIVE_INFINITY;
        }
        Interval interval = interval();
        if (interval.method() == Interval.Method.WILSON) {
            // An end of the interval tells for how many independent trials these have counted.
            double end = seen() > 0 ? interval.low() : interval.high();
            return trials * Wilson.trialsToTell(seen(), target) / Wilson.trialsToTell(seen(), end);
        }
        double reach = gap > 0 ? interval.high() - share.mean() : share.mean() - interval.low();
        return trials * (reach / gap) * (reach / gap);
    }

    /** The share of all trials, from their counts: unlike a mean of ratios it is not off by a rounding error. */
    private double seen() {
        return (double) (trials - failures) / trials;
    }

    private Interval interval() {
        return share.interval().orElseThrow(() -> new IllegalStateException("a share without an interval: " + share));
    }

    private static Optional<Long> whole(double number) {
        return number < Double.POSITIVE_INFINITY ? Optional.of((long) Math.ceil(number)) : Optional.empty();
    }
}
