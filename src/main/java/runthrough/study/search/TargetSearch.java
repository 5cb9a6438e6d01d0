package runthrough.study.search;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.search.Crossing.Found;
import runthrough.study.search.Trials.Question;

/**
 * Finds where along one number the target is crossed, see {@link Crossing}.
 *
 * <p>From a guess it gallops, in steps that grow threefold, until a value that is good enough and a harder one that is not
 * lie side by side; then it halves what is between them until that is a step of the scale. The trial of a value answers all
 * three questions (is the target seen to be met, shown to be met, not shown to be missed), so that none is tried twice. A
 * better guess costs fewer trials; where the share falls as more is asked of the line, it does not change the result.
 */
public final class TargetSearch {
    /** By how much a step grows while galloping. */
    private static final double GROWTH = 3;

    /** A first step, relative, from a guess that may be some way off. */
    private static final double FAR = 0.02;

    /** The same from a guess that is likely to be right, as a part of what counts as near: just enough to tell. */
    private static final double NEAR = 0.9;

    /** The same from the value that is the best guess, on the way to the ends of its interval. */
    private static final double BESIDE = 4;

    /** Relative distance that two values count as near within. */
    private static final double STEPS_ARE_NEAR = 2.5e-3;

    private static final double HALF = 0.5;

    private final Scale scale;
    private final Trials trials;

    /**
     * A search.
     *
     * @param trial from a value to what the line gives with it; empty where the line is refused, which is not good enough
     * @param target share of coil changes that should run through, in (0, 1]
     * @param scale where to search, and how finely
     */
    public TargetSearch(DoubleFunction<Optional<Evaluation>> trial, double target, Scale scale) {
        this(trial, Goal.runThrough(target), scale);
    }

    /** The same with another goal than to run through. */
    public TargetSearch(DoubleFunction<Optional<Evaluation>> trial, Goal goal, Scale scale) {
        this.scale = scale;
        this.trials = new Trials(ease -> trial.apply(scale.ease(ease)), goal);
    }

    /**
     * Guesses at the three values of a {@link Crossing}.
     *
     * @param isNear whether they are likely to be right
     */
    public record Guess(double value, double sure, double possible, boolean isNear) {

        /** A guess that may be some way off. */
        public static Guess about(double value) {
            return new Guess(value, value, value, false);
        }
    }

    /** About where the share seen meets the target, beginning at {@code guess}; that where it is met nowhere. */
    public double roughly(double guess) {
        return seen(guess).orElse(guess);
    }

    /** The same; empty where it is met nowhere. */
    public OptionalDouble seen(double guess) {
        settle(Question.SEEN, guess, FAR);
        return hardest(Question.SEEN);
    }

    /**
     * The hardest value at which the target is shown to be met, beginning at {@code guess}; where a run is too short to show that, at
     * which it is seen to be. Nothing is asked of an interval, which takes a third of the trials of {@link #from}.
     */
    public OptionalDouble enough(double guess) {
        trials.isGood(Question.SEEN, scale.nearest(scale.ease(guess)));
        Question asked = trials.canBeSure() ? Question.SURE : Question.SEEN;
        settle(asked, guess, FAR);
        return hardest(asked);
    }

    /** Searches, beginning at {@code guess}. */
    public Crossing from(Guess guess) {
        settle(Question.SEEN, guess.value(), guess.isNear() ? NEAR * STEPS_ARE_NEAR : FAR);
        OptionalDouble value = hardest(Question.SEEN);
        // By as much as the guess was off, the guesses at the ends are likely to be.
        double off = value.isPresent() ? value.getAsDouble() - guess.value() : 0;
        double step = (guess.isNear() ? NEAR : BESIDE) * STEPS_ARE_NEAR;
        settle(Question.POSSIBLE, guess.possible() + off, step);
        if (trials.canBeSure()) {
            settle(Question.SURE, guess.sure() + off, step);
        }
        return crossing(value);
    }

    /** Tries values until the hardest good one and a bad one beside it are known, or an end is reached. */
    private void settle(Question question, double guess, double firstStep) {
        double next = scale.ease(guess);
        double step = scale.firstStep(firstStep, next);
        next = beyondWhatIsKnown(question, next, step);
        for (int tried = 0; !isSettled(question); tried++) {
            next = within(question, next, tried % 2 == 0);
            next += trials.isGood(question, next) ? -step : step;
            step *= GROWTH;
        }
    }

    /** {@code ease}; where a guess shows nothing new, one step further in the direction in which the other side has to be found. */
    private double beyondWhatIsKnown(Question question, double ease, double step) {
        OptionalDouble good = trials.hardestGood(question);
        OptionalDouble bad = trials.easiestBad(question);
        if (good.isPresent() && bad.isEmpty()) {
            return Math.min(ease, good.getAsDouble() - step);
        }
        return bad.isPresent() && good.isEmpty() ? Math.max(ease, bad.getAsDouble() + step) : ease;
    }

    private boolean isSettled(Question question) {
        OptionalDouble good = trials.hardestGood(question);
        OptionalDouble bad = trials.easiestBad(question);
        if (good.isPresent() && bad.isPresent()) {
            return scale.areNeighbours(good.getAsDouble(), bad.getAsDouble());
        }
        return good.isPresent()
                ? good.getAsDouble() <= scale.hardest()
                : bad.orElse(Double.NEGATIVE_INFINITY) >= scale.easiest();
    }

    /**
     * {@code ease}, or if it shows nothing new, what lies between the good and the bad or at the end of the range: where the share
     * is likely to be the target if {@code bySlope}, else half-way, for a share that jumps has no slope.
     */
    private double within(Question question, double ease, boolean bySlope) {
        double good = trials.hardestGood(question).orElse(Double.POSITIVE_INFINITY);
        double bad = trials.easiestBad(question).orElse(Double.NEGATIVE_INFINITY);
        if (bad < ease && ease < good) {
            return scale.within(ease, bad, good);
        }
        if (Double.isFinite(good) && Double.isFinite(bad)) {
            double part = bySlope ? trials.partToTarget(question, bad, good) : HALF;
            return scale.within(bad + part * (good - bad), bad, good);
        }
        return Double.isFinite(good) ? scale.hardest() : scale.easiest();
    }

    private Crossing crossing(OptionalDouble value) {
        boolean crossed = value.isPresent() && trials.easiestBad(Question.SEEN).isPresent();
        return new Crossing(
                crossed ? Found.CROSSED : value.isPresent() ? Found.MET_THROUGHOUT : Found.MISSED_THROUGHOUT,
                scale.harder(),
                scale.from(),
                scale.to(),
                value,
                hardest(Question.SURE),
                hardest(Question.POSSIBLE),
                crossed ? value(trials.easiestBad(Question.SEEN)) : OptionalDouble.empty(),
                precision(),
                trials.count(),
                trials.fall(),
                trials.canBeSure());
    }

    private OptionalDouble hardest(Question question) {
        return value(trials.hardestGood(question));
    }

    private OptionalDouble value(OptionalDouble ease) {
        return ease.isPresent() ? OptionalDouble.of(scale.ease(ease.getAsDouble())) : ease;
    }

    private double precision() {
        double widest = 0;
        for (Question question : Question.values()) {
            OptionalDouble good = trials.hardestGood(question);
            OptionalDouble bad = trials.easiestBad(question);
            if (good.isPresent() && bad.isPresent()) {
                widest = Math.max(widest, scale.distance(good.getAsDouble(), bad.getAsDouble()));
            }
        }
        return widest;
    }
}
