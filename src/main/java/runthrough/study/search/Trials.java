package runthrough.study.search;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.statistics.Interval;

/** The values tried so far, in order of their ease, and what the line gave with each. */
final class Trials {
    private final DoubleFunction<Optional<Evaluation>> line;
    private final Goal goal;
    /** So close to one end, as a part of what lies between, is not tried. */
    private static final double NEAR_END = 0.1;

    private final NavigableMap<Double, Shares> byEase = new TreeMap<>();

    /**
     * No trials yet.
     *
     * @param line from the ease of a value to what the line gives; empty where it is refused
     */
    Trials(DoubleFunction<Optional<Evaluation>> line, Goal goal) {
        this.line = line;
        this.goal = goal;
    }

    /** What is asked of a value. */
    enum Question {
        /** Whether the share seen meets the target. */
        SEEN,
        /** Whether the target is shown to be met. */
        SURE,
        /** Whether the target is not shown to be missed. */
        POSSIBLE
    }

    /** The share seen and the ends of its interval; all -1 where the line was refused, which answers no to everything. */
    private record Shares(double seen, double low, double high, boolean canBeSure) {
        private static final Shares REFUSED = new Shares(-1, -1, -1, true);

        static Shares of(Evaluation evaluation, Goal goal) {
            double seen = (double) goal.reached(evaluation) / evaluation.changes();
            Optional<Interval> interval =
                    evaluation.chance() ? goal.share(evaluation).interval() : Optional.empty();
            boolean canBeSure = evaluation
                    .resolution(goal.target())
                    .leastToShow()
                    .map(least -> least <= evaluation.changes())
                    .orElse(!evaluation.chance());
            return new Shares(
                    seen,
                    interval.map(Interval::low).orElse(seen),
                    interval.map(Interval::high).orElse(seen),
                    canBeSure);
        }

        boolean isRun() {
            return !equals(REFUSED);
        }

        double of(Question question) {
            return switch (question) {
                case SEEN -> seen;
                case SURE -> low;
                case POSSIBLE -> high;
            };
        }
    }

    /** Tries a value, if it has not been tried, and shows whether it is good enough. */
    boolean isGood(Question question, double ease) {
        return byEase.computeIfAbsent(
                                ease,
                                key -> line.apply(key)
                                        .map(evaluation -> Shares.of(evaluation, goal))
                                        .orElse(Shares.REFUSED))
                        .of(question)
                >= goal.target();
    }

    /**
     * Which part of the way from {@code bad} to {@code good}, both tried, the share takes to the target if it rises evenly; kept
     * away from the ends, and half where one of the two was refused.
     */
    double partToTarget(Question question, double bad, double good) {
        double below = of(question, bad);
        double above = of(question, good);
        return below < 0
                ? 0.5
                : Math.min(1 - NEAR_END, Math.max(NEAR_END, (goal.target() - below) / Math.max(above - below, 1e-12)));
    }

    private double of(Question question, double ease) {
        return Objects.requireNonNull(byEase.get(ease)).of(question);
    }

    /** The hardest value tried that is good enough. */
    OptionalDouble hardestGood(Question question) {
        return first(byEase.entrySet().stream()
                .filter(entry -> entry.getValue().of(question) >= goal.target())
                .findFirst());
    }

    /** The easiest value tried that is harder than every good one; none of the two need be there. */
    OptionalDouble easiestBad(Question question) {
        OptionalDouble good = hardestGood(question);
        return first(
                Optional.ofNullable(good.isPresent() ? byEase.lowerEntry(good.getAsDouble()) : byEase.lastEntry()));
    }

    private static OptionalDouble first(Optional<Map.Entry<Double, Shares>> entry) {
        return entry.map(e -> OptionalDouble.of(e.getKey())).orElseGet(OptionalDouble::empty);
    }

    /** Whether with any value so many coil changes were run that their successes could show the target met. */
    boolean canBeSure() {
        return byEase.values().stream().noneMatch(Shares::isRun)
                || byEase.values().stream().anyMatch(shares -> shares.isRun() && shares.canBeSure());
    }

    int count() {
        return byEase.size();
    }

    /** By how much the share seen fell at most on the way to easier values. */
    double fall() {
        double greatest = 0;
        double fall = 0;
        for (Shares shares : byEase.values()) {
            if (shares.seen() >= 0) {
                fall = Math.max(fall, greatest - shares.seen());
                greatest = Math.max(greatest, shares.seen());
            }
        }
        return fall;
    }
}
