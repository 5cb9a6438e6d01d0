package runthrough.report.verdict;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.report.Texts;
import runthrough.study.TargetStatus;
import runthrough.study.Verdict;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.RelativeHalfWidth;

/**
 * The verdict in a word, a sentence, and where it cannot be told, in what would tell.
 *
 * @param mark the word
 * @param sentence the answer with its numbers
 * @param further what else must be known to read it, such as how many coil changes would decide
 */
record VerdictHeadline(Mark mark, String sentence, Optional<String> further) {

    /** The verdict in a word. */
    enum Mark {
        RUNS_THROUGH("RUNS THROUGH", "✓"),
        MARGINAL("MARGINAL", "◆"),
        SLOWS("SLOWS", "▼"),
        STOPS("STOPS", "✗");

        private final String word;
        private final String sign;

        Mark(String word, String sign) {
            this.word = word;
            this.sign = sign;
        }

        String word() {
            return word;
        }

        /** A sign whose shape tells the marks apart without colour. */
        String sign() {
            return sign;
        }
    }

    static VerdictHeadline of(RunThroughResult result) {
        Texts texts = result.texts();
        Verdict verdict = result.verdict();
        if (result.isOneStrip() && verdict.changes().ranThrough() == 0) {
            String sentence = "Every coil change stops the process, each for "
                    + texts.time(verdict.joint().time().mean().mean()) + " on average.";
            return new VerdictHeadline(Mark.STOPS, sentence, Optional.empty());
        }
        return new VerdictHeadline(mark(verdict), sentence(verdict, texts), further(result, texts));
    }

    private static Mark mark(Verdict verdict) {
        return switch (verdict.answer()) {
            case MEETS -> Mark.RUNS_THROUGH;
            case UNDECIDED -> Mark.MARGINAL;
            case MISSES -> verdict.changes().stopped() > 0 ? Mark.STOPS : Mark.SLOWS;
        };
    }

    private static String sentence(Verdict verdict, Texts texts) {
        boolean all = verdict.changes().failed() == 0;
        String seen = all
                ? "The process runs through every coil change"
                : "The process runs through "
                        + texts.share(verdict.shareRunThrough().mean()) + " of coil changes";
        String sure = verdict.shareRunThrough()
                .interval()
                .filter(interval -> verdict.chance())
                .map(interval -> sure(interval, all, texts))
                .orElse("");
        return seen + sure + "; " + against(verdict.answer(), all) + " " + texts.share(verdict.target()) + ".";
    }

    private static String sure(Interval interval, boolean all, Texts texts) {
        return all
                ? " (at least " + texts.share(interval.low()) + " with 95 % confidence)"
                : " (95 % interval " + texts.share(interval.low()) + " to " + texts.share(interval.high()) + ")";
    }

    private static String against(TargetStatus answer, boolean all) {
        return switch (answer) {
            case MEETS -> "this meets the target of";
            case MISSES -> "this misses the target of";
            case UNDECIDED -> all ? "too few were run to show the target of" : "the interval holds the target of";
        };
    }

    private static Optional<String> further(RunThroughResult result, Texts texts) {
        String text = Stream.of(
                        undecided(result.verdict(), texts),
                        result.precision().map(precision -> precision(precision, texts)))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private static Optional<String> undecided(Verdict verdict, Texts texts) {
        if (verdict.answer() != TargetStatus.UNDECIDED) {
            return Optional.empty();
        }
        String run = Texts.count(verdict.changes().total()) + " coil changes were run";
        String target = " to show a share of " + texts.share(verdict.target());
        Optional<String> least = verdict.resolution()
                .leastToShow()
                .filter(number -> number > verdict.changes().total())
                .map(number -> "; it takes at least " + about(number) + target);
        if (verdict.changes().failed() == 0) {
            return Optional.of(run
                    + least.orElse("; no number of them can show a share of " + texts.share(verdict.target())) + ".");
        }
        String decide = verdict.resolution()
                .toDecide()
                .map(number -> "; about " + about(number) + " would decide, if the share stays what it is.")
                .orElse("; no number of them would decide.");
        return Optional.of(
                run + least.map(number -> number + ", even if all run through").orElse("") + decide);
    }

    /** Whether the interval is as narrow as was asked for. */
    private static String precision(RelativeHalfWidth precision, Texts texts) {
        String asked = "plus or minus " + texts.share(precision.asked());
        if (precision.reached()) {
            return "The share is known to " + asked + ", as asked for.";
        }
        String there = precision.halfWidth().isPresent()
                ? "The share is known to plus or minus "
                        + texts.share(precision.halfWidth().getAsDouble()) + " only, not to "
                : "The share is not known to ";
        String more = precision.wouldDo().isPresent()
                ? "about " + about(precision.wouldDo().getAsInt()) + " would do"
                : "how many would do cannot be told";
        return there + asked + " as asked for: the " + Texts.count(precision.limit())
                + " replications allowed are used up; " + more + ".";
    }

    /** Rounded up to three digits: it is an estimate. */
    private static String about(long number) {
        return Texts.count(new BigDecimal(number)
                .round(new MathContext(3, RoundingMode.CEILING))
                .longValueExact());
    }
}
