package runthrough.study.lever;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A lever that may be changed together with another.
 *
 * @param measure of it
 * @param alone how much it has to be changed alone, as a part of what it is; empty where it is not enough alone
 */
record PairHalf(LeverMeasure measure, OptionalDouble alone) {
    /** Clearly less of a lever than it takes alone. */
    static final double CLEARLY_LESS = 0.8;

    private static final double ROUNDING = 1e-9;

    /** That of {@code varied}, which alone gives {@code answer}; empty of what is no half. */
    static Optional<PairHalf> of(Varied varied, LeverAnswer answer) {
        boolean isAsked =
                answer.status() == LeverAnswer.Status.ENOUGH || answer.status() == LeverAnswer.Status.NONE_IS_ENOUGH;
        if (!isAsked || varied.lever().what() == Lever.What.ELEMENT) {
            return Optional.empty();
        }
        LeverMeasure measure = LeverMeasure.of(varied);
        OptionalDouble alone = answer.value().stream().map(measure::part).findFirst();
        return Optional.of(new PairHalf(measure, alone));
    }

    /** The most of it that is clearly less than it takes alone; where it is not enough alone as much again as there is. */
    double most() {
        return Math.min(
                measure.most(),
                alone.stream().map(part -> CLEARLY_LESS * part).findFirst().orElse(1));
    }

    /** Whether {@code change} is one, and clearly less than it takes alone. */
    boolean isClearlyLess(LeverChange change) {
        return change.amount() > 0 && change.part() <= most() * (1 + ROUNDING);
    }

    /** Whether one more of it is not enough alone, or nearly. */
    boolean takesMoreThanOne() {
        return isClearlyLess(measure.to(measure.oneMore()));
    }
}
