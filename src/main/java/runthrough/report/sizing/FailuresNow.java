package runthrough.report.sizing;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.report.Texts;
import runthrough.study.TargetStatus;
import runthrough.study.cause.Cause;
import runthrough.study.sizing.Sizing;

/**
 * That an accumulator is a dear answer where most coil changes fail because a joint waits: capacity then bridges hours without
 * people, or a preparation, instead of joints.
 *
 * @param sizing what was found
 * @param present whether the accumulator as it is meets the target: then there is nothing else to look for
 */
record FailuresNow(Sizing sizing, TargetStatus present) {
    private static final double MOST = 0.5;

    /** Which wait most failures come from with the accumulator as it is; empty where a capacity is the answer to most of them. */
    Optional<String> sentence() {
        return cause().map(main -> "Yet as the line is, " + main.words() + " is the cause of "
                + Texts.count(sizing.causes().count(main)) + " of "
                + Texts.count(sizing.causes().total(), "coil change") + " that did not run through. "
                + (main == Cause.WAITING_FOR_PREPARATION ? "Preparation, people" : "People")
                + " and breaks are the cheaper place to look.");
    }

    /** Where to read on. */
    Optional<String> advice() {
        return cause().map(main ->
                "To find what crew, or which element of work made shorter, would meet the target, ask what would fix the"
                        + " line (run --levers).");
    }

    private Optional<Cause> cause() {
        if (sizing.answer() != Sizing.Answer.FOUND || present == TargetStatus.MEETS) {
            return Optional.empty();
        }
        Comparator<Cause> more = Comparator.comparingLong(sizing.causes()::count);
        long waits = waits().mapToLong(sizing.causes()::count).sum();
        return waits > MOST * sizing.causes().total() ? waits().max(more) : Optional.empty();
    }

    private static Stream<Cause> waits() {
        return Stream.of(Cause.WAITING_FOR_PREPARATION, Cause.WAITING_FOR_PEOPLE, Cause.BOTH_WAITS);
    }
}
