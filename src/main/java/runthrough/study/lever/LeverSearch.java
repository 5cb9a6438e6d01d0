package runthrough.study.lever;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
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
        // More may be worse: of a crew that must first refill a large accumulator. Then what there is may do, and a
        // little less.
        return search.from(Guess.about(isMet(goal, varied.present()) ? varied.present() : varied.easiest()));
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
