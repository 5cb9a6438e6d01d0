package runthrough.study.lever;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
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

    private final Varied varied;
    private final LineTrials trials;
    private final Optional<LineTrials> quickTrials;
    private final Map<Double, Optional<Evaluation>> tried = new HashMap<>();

    /**
     * A search along {@code varied}.
     *
     * @param trials of variants of the line
     * @param quickTrials the same with fewer replications, to begin near the answer; empty where a run is short as it is
     */
    public LeverSearch(Varied varied, LineTrials trials, Optional<LineTrials> quickTrials) {
        this.varied = varied;
        this.trials = trials;
        this.quickTrials = quickTrials;
    }

    /** What {@code value} gives. */
    public Optional<Evaluation> attempt(double value) {
        return tried.computeIfAbsent(value, v -> trials.attempt(varied.variant().apply(v)));
    }

    /** Where {@code goal} is reached; {@code guess} is a value from which to begin. */
    public Crossing find(Goal goal, double guess) {
        TargetSearch search = new TargetSearch(this::attempt, goal, varied.scale());
        if (isMet(goal, varied.easiest())) {
            return search.from(Guess.about(near(goal, guess)));
        }
        return search.from(Guess.about(nearPresent(goal).orElse(varied.easiest())));
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
