package runthrough.study.lever;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import runthrough.plant.Line;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.search.Crossing;
import runthrough.study.search.TargetSearch;
import runthrough.study.search.TargetSearch.Guess;

/**
 * Finds where along one lever a target is met.
 *
 * <p>Rule LEVER-12.
 */
public final class LeverSearch {
    /** What is tried of the present capacity where a very large one is not enough: the nearest first. */
    private static final double[] NEAR_PRESENT = {1, Math.sqrt(0.5), Math.sqrt(2), 0.5, 2, 0.25, 4};

    /** Whether a line that meets a goal in its run, in which it gave what it did, goes on meeting it. */
    @FunctionalInterface
    interface Endurance {
        boolean lasts(Goal goal, Line variant, Evaluation seen);
    }

    private final Varied varied;
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
    LeverSearch(Varied varied, LineTrials trials, Optional<LineTrials> quickTrials, Endurance endurance) {
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
        return varied.lever().what() != Lever.What.CAPACITY
                || found.answer().stream().noneMatch(capacity -> capacity > varied.present());
    }

    /** Whether the answer of {@code found}, if there is one, is enough in the long run too. */
    public boolean lasts(Goal goal, Crossing found) {
        return found.answer().stream()
                .anyMatch(value -> attempt(value)
                        .filter(seen -> endurance.lasts(goal, varied.variant().apply(value), seen))
                        .isPresent());
    }

    /** More capacity may be worse, as of a crew that must first refill it: then what there is may do, or what is not far from it. */
    private OptionalDouble nearPresent(Goal goal) {
        double[] factors = varied.lever().what() == Lever.What.CAPACITY ? NEAR_PRESENT : new double[] {1};
        double step = varied.scale().step();
        return DoubleStream.of(factors)
                .map(factor -> factor == 1 ? varied.present() : Math.rint(factor * varied.present() / step) * step)
                .filter(value -> isMet(goal, value))
                .findFirst();
    }

    private boolean isMet(Goal goal, double value) {
        return attempt(value).filter(goal::isSeenMet).isPresent();
    }

    private double near(Goal goal, double guess) {
        return quickTrials
                .map(quick -> new TargetSearch(
                                value -> quick.attempt(varied.variant().apply(value)), goal, varied.scale())
                        .roughly(guess))
                .orElse(guess);
    }
}
