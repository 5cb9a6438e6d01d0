package runthrough.study.lever;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Line;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.search.Crossing;
import runthrough.study.search.TargetSearch;
import runthrough.study.search.TargetSearch.Guess;

/**
 * Finds where along one number, that of a lever or of a pair of them, a target is met.
 *
 * <p>Rule LEVER-12.
 */
public final class LeverSearch {
    /** More than rounding does to a capacity, relative. */
    private static final double ROUNDING = 1e-9;

    /** Whether a line that meets a goal in its run, in which it gave what it did, goes on meeting it. */
    @FunctionalInterface
    interface Endurance {
        boolean lasts(Goal goal, Line variant, Evaluation seen);
    }

    private final Along varied;
    private final LineTrials trials;
    private final Optional<LineTrials> quickTrials;
    private final Endurance endurance;
    private final Map<Double, Optional<Evaluation>> tried = new HashMap<>();

    /**
     * A search along {@code varied}.
     *
     * @param trials of variants of the line
     * @param quickTrials the same with fewer replications, to begin near the answer; empty where a run is short as it is
     * @param endurance what more capacity than there is has to show
     */
    LeverSearch(Along varied, LineTrials trials, Optional<LineTrials> quickTrials, Endurance endurance) {
        this.varied = varied;
        this.trials = trials;
        this.quickTrials = quickTrials;
        this.endurance = endurance;
    }

    /** What {@code value} gives. */
    public Optional<Evaluation> attempt(double value) {
        return tried.computeIfAbsent(value, v -> trials.attempt(varied.variant().apply(v)));
    }

    /** Where {@code goal} is reached; {@code guess} is a value from which to begin. */
    public Crossing find(Goal goal, double guess) {
        Crossing found = isMet(goal, varied.easiest())
                ? from(goal, near(goal, guess))
                : from(goal, nearPresent(goal).orElse(varied.easiest()));
        if (isNoMoreCapacity(found) || lasts(goal, found)) {
            return found;
        }
        return nearPresent(goal).stream()
                .mapToObj(value -> from(goal, value))
                .filter(near -> lasts(goal, near))
                .findFirst()
                .orElseGet(found::missedInTheLongRun);
    }

    private Crossing from(Goal goal, double guess) {
        return new TargetSearch(this::attempt, goal, varied.scale()).from(Guess.about(guess));
    }

    private boolean isNoMoreCapacity(Crossing found) {
        return found.answer().stream().noneMatch(this::isMoreCapacity);
    }

    private boolean isMoreCapacity(double value) {
        double present = varied.line().accumulator().capacity() * (1 + ROUNDING);
        return varied.variant().apply(value).accumulator().capacity() > present;
    }

    /** About where {@code goal} is seen to be reached, in a run with fewer replications; empty where it is nowhere. */
    OptionalDouble roughly(Goal goal, double guess) {
        return quickTrials.isPresent() ? quickly(goal, quickTrials.get()).seen(guess) : OptionalDouble.of(guess);
    }

    /** The value that asks most of those with which {@code goal} is shown to be reached, not far from {@code guess}, and lasts. */
    OptionalDouble enoughNear(Goal goal, double guess) {
        return new TargetSearch(this::attempt, goal, varied.scale())
                .enough(guess).stream()
                        .filter(value -> !isMoreCapacity(value) || lasts(goal, value))
                        .findFirst();
    }

    /** Whether the answer of {@code found}, if there is one, is enough in the long run too. */
    public boolean lasts(Goal goal, Crossing found) {
        return found.answer().stream().anyMatch(value -> lasts(goal, value));
    }

    private boolean lasts(Goal goal, double value) {
        return attempt(value)
                .filter(seen -> endurance.lasts(goal, varied.variant().apply(value), seen))
                .isPresent();
    }

    private OptionalDouble nearPresent(Goal goal) {
        return varied.nearPresent().filter(value -> isMet(goal, value)).findFirst();
    }

    private boolean isMet(Goal goal, double value) {
        return attempt(value).filter(goal::isSeenMet).isPresent();
    }

    private double near(Goal goal, double guess) {
        return quickTrials.map(quick -> quickly(goal, quick).roughly(guess)).orElse(guess);
    }

    private TargetSearch quickly(Goal goal, LineTrials quick) {
        return new TargetSearch(value -> quick.attempt(varied.variant().apply(value)), goal, varied.scale());
    }
}
