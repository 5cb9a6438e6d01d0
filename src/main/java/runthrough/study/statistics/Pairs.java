package runthrough.study.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How differences between two variants are judged that met the same random numbers, replication by replication.
 *
 * <p>The interval is Student's t over the differences of the pairs (the paired t interval), which needs neither equal spreads
 * nor independence of the two: what random numbers they share falls out. Where that is not honest another takes its place, or none:
 *
 * <ul>
 *   <li>No pair differs but for rounding: no difference, and no interval.
 *   <li>All pairs differ by the same: no interval.
 *   <li>A share, when fewer than {@value Estimators#FEW} trials went the one way here and the other way there, or when all
 *       pairs differ by the same: from the intervals of the two shares by "square and add", which leaves out that they share
 *       their random numbers and so is rather too wide.
 *   <li>Where events that one has and the other has not are few: see {@link #means(SplitValues, SplitValues)}.
 *   <li>Where only a few of the pairs differ, and the others are the same, one t interval may look sure that rests on two or
 *       three events. As many pairs must differ as a sign test would want if all differed the same way ({@code 2^(1 - k)} at
 *       most what the interval leaves out); otherwise it is stretched to zero.
 * </ul>
 *
 * <p>When several differences are judged at once, one of them may look significant by chance. By Bonferroni's inequality all of
 * {@code m} intervals hold together with 95 % confidence when each holds with {@code 1 - 0.05/m}; a difference counts as significant
 * only if that wider interval leaves zero out.
 *
 * <p>Sources, from memory: A. M. Law, "Simulation Modeling and Analysis", 4th ed., 2007, sections 10.2.1 (paired t) and
 * 10.3.1 (Bonferroni, all against a standard); R. G. Newcombe, "Interval estimation for the difference between independent
 * proportions: comparison of eleven methods", Statistics in Medicine 17, 1998, method 10 (square and add).
 */
public final class Pairs {
    /** Values that differ by less than this part of themselves are the same but for rounding. */
    private static final double ROUNDING = 1e-9;

    private final double confidence;

    private Pairs(double confidence) {
        this.confidence = confidence;
    }

    /** Judges {@code comparisons} differences at once, {@code >= 1}. */
    public static Pairs of(int comparisons) {
        return new Pairs(1 - (1 - Interval.CONFIDENCE) / comparisons);
    }

    /** Confidence of each interval, in (0, 1). */
    public double confidence() {
        return confidence;
    }

    /** Whether two values are the same but for rounding. */
    static boolean isSame(double here, double there) {
        return Math.abs(here - there) <= ROUNDING * Math.max(Math.abs(here), Math.abs(there));
    }

    /**
     * By how much the mean of {@code here} is more than that of {@code there}.
     *
     * @param here one value of each replication; NaN where there was none, and that pair is left out
     * @param there as many
     */
    public Difference means(double[] here, double[] there) {
        double[] differences = differences(here, there);
        int pairs = differences.length;
        int differing =
                (int) IntStream.range(0, pairs).filter(i -> differences[i] != 0).count();
        if (pairs == 0) {
            return new Difference(Double.NaN, 0, Optional.empty(), confidence, Difference.Significance.NOT_SHOWN);
        }
        if (differing == 0) {
            return new Difference(0, pairs, Optional.empty(), confidence, Difference.Significance.NONE);
        }
        Estimate byT = Estimators.mean(confidence, differences);
        boolean enough = Math.scalb(1.0, 1 - differing) <= 1 - confidence;
        if (byT.interval().isEmpty()) {
            return new Difference(
                    byT.mean(),
                    pairs,
                    Optional.empty(),
                    confidence,
                    enough ? Difference.Significance.SIGNIFICANT : Difference.Significance.NOT_SHOWN);
        }
        Interval interval = byT.interval().get();
        return judged(byT.mean(), pairs, differing == pairs || enough ? interval : stretchedToZero(interval));
    }

    /**
     * The same of values whose parts are known, of as many replications. Where two variants met the same random numbers, an event
     * that both have falls out; what remains are events that one has and the other has not. Where these are few, the interval
     * stands on their count: {@link FewEvents} for what they add and for what they take away, Student's t for all else.
     */
    public Difference means(SplitValues here, SplitValues there) {
        double[] ones = here.values();
        double[] others = there.values();
        List<EventPart> few = new ArrayList<>();
        for (int kind = 0; kind < Math.min(here.parts().size(), there.parts().size()); kind++) {
            few.addAll(fewApart(here.parts().get(kind), there.parts().get(kind)));
        }
        if (few.isEmpty()) {
            return means(ones, others);
        }
        double[] rest = differences(ones, others);
        double[] events = new double[rest.length];
        few.forEach(part -> Arrays.setAll(events, i -> events[i] + part.effects()[i]));
        Arrays.setAll(rest, i -> Pairs.isSame(rest[i], events[i]) ? 0 : rest[i] - events[i]);
        FewEvents limits = new FewEvents(confidence);
        List<Reach> reaches = new ArrayList<>(List.of(Reach.byT(confidence, rest)));
        few.forEach(part -> reaches.add(Reach.of(limits.limits(part), part.mean())));
        double mean = Moments.of(differences(ones, others)).mean();
        return Reach.together(reaches)
                .around(mean, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Interval.Method.FEW_EVENTS)
                .map(interval -> judged(mean, rest.length, interval))
                .map(judged -> isNothingApart(ones, others) ? judged.asNone() : judged)
                .orElseGet(() -> means(ones, others));
    }

    private static boolean isNothingApart(double[] ones, double[] others) {
        return IntStream.range(0, ones.length).allMatch(i -> isSame(ones[i], others[i]));
    }

    /**
     * What one has more and less of events of a kind than the other, where that is little but not nothing; what either might have
     * where neither has any; otherwise none.
     */
    private List<EventPart> fewApart(EventPart here, EventPart there) {
        if (here.count() + there.count() == 0) {
            return here.isThere() || there.isThere() ? List.of(here, there.times(-1)) : List.of();
        }
        EventPart more = here.moreThan(there);
        EventPart less = there.moreThan(here).times(-1);
        long count = more.count() + less.count();
        boolean someAlike =
                IntStream.range(0, here.replications()).anyMatch(i -> more.events()[i] + less.events()[i] == 0);
        FewEvents few = new FewEvents(confidence);
        boolean isFew = count > 0 && someAlike && few.equivalent(more) + few.equivalent(less) < Estimators.FEW;
        return isFew ? List.of(more.orAsMuchAs(less), less.orAsMuchAs(more)) : List.of();
    }

    /** By how much the share {@code here} is more than the one {@code there}; both of as many replications, or exact. */
    public Difference shares(Successes here, Successes there) {
        if (here.exact() && there.exact()) {
            return Difference.exact(here.share(0), there.share(0), confidence);
        }
        int replications = Math.max(here.replications(), there.replications());
        Difference byT = means(here.shares(replications), there.shares(replications));
        boolean few = turnedOutOtherwise(here, there, replications) < Estimators.FEW;
        boolean isEnough = byT.interval().isPresent() && !few;
        return byT.significance() == Difference.Significance.NONE || isEnough
                ? byT
                : judged(byT.mean(), byT.pairs(), squareAndAdd(byT.mean(), here, there));
    }

    /** At least so many trials were successes in the one and not in the other. */
    private static double turnedOutOtherwise(Successes here, Successes there, int replications) {
        double[] shares = here.shares(replications);
        double[] others = there.shares(replications);
        return IntStream.range(0, replications)
                .mapToDouble(i -> Math.abs(shares[i] - others[i]) * Math.max(here.trials(i), there.trials(i)))
                .filter(number -> !Double.isNaN(number))
                .sum();
    }

    private Interval squareAndAdd(double difference, Successes here, Successes there) {
        Successes.Ends one = here.ends(confidence);
        Successes.Ends other = there.ends(confidence);
        return new Interval(
                Math.max(-1, difference - Math.hypot(one.below(), other.above())),
                Math.min(1, difference + Math.hypot(one.above(), other.below())),
                Interval.Method.SQUARE_AND_ADD);
    }

    private Difference judged(double mean, int pairs, Interval interval) {
        Difference.Significance significance =
                interval.contains(0) ? Difference.Significance.NOT_SHOWN : Difference.Significance.SIGNIFICANT;
        return new Difference(mean, pairs, Optional.of(interval), confidence, significance);
    }

    private static Interval stretchedToZero(Interval interval) {
        return new Interval(Math.min(0, interval.low()), Math.max(0, interval.high()), interval.method());
    }

    private static double[] differences(double[] here, double[] there) {
        if (here.length != there.length) {
            throw new IllegalArgumentException(here.length + " replications cannot be paired with " + there.length);
        }
        return IntStream.range(0, here.length)
                .filter(i -> !Double.isNaN(here[i] - there[i]))
                .mapToDouble(i -> isSame(here[i], there[i]) ? 0 : here[i] - there[i])
                .toArray();
    }
}
