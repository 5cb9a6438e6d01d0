package runthrough.report.limits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.StudyWords;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.lever.LeverWords;
import runthrough.study.Evaluation;
import runthrough.study.Goal;
import runthrough.study.TargetStatus;
import runthrough.study.lever.Lever;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;

/** Says whether a line is within its limits, and what alone would bring it to the target or lose it. */
final class LimitsHeadline {
    private final Limits limits;
    private final StudyWords words;
    private final LimitValues values;

    LimitsHeadline(LimitValues values, StudyWords words) {
        this.limits = values.limits();
        this.words = words;
        this.values = values;
    }

    Headline headline() {
        Optional<TargetStatus> present = limits.present().map(evaluation -> evaluation.answer(limits.target()));
        if (present.isEmpty()) {
            return new Headline(
                    Tone.MARGINAL,
                    "NO LIMITS TO FIND",
                    "Entry and process of this line are one strip: every coil change stops it, at any process speed and"
                            + " with any joint. There is no value up to which it runs through.");
        }
        return switch (present.get()) {
            case MEETS -> new Headline(Tone.RUNS_THROUGH, "WITHIN ITS LIMITS", sentence() + withoutStop());
            case MISSES -> new Headline(Tone.STOPS, "BEYOND ITS LIMITS", sentence());
            case UNDECIDED -> new Headline(Tone.MARGINAL, "AT ITS LIMITS", sentence());
        };
    }

    /** A second target that is not met while the first is: the word says nothing of it. */
    private String withoutStop() {
        Evaluation present = limits.present().orElseThrow();
        OptionalDouble target = limits.request().run().targetWithoutStop();
        return target.isPresent() && present.answer(Goal.withoutStop(target.getAsDouble())) != TargetStatus.MEETS
                ? words.missedWithoutStop(present.shareWithoutStop(), target.getAsDouble())
                : "";
    }

    private String sentence() {
        Evaluation present = limits.present().orElseThrow();
        boolean meets = present.answer(limits.target()) == TargetStatus.MEETS;
        String now = "As it is, the line runs through "
                + words.known(present.shareRunThrough()) + " of coil changes; the target is "
                + Texts.target(limits.target()) + ". ";
        Stream<String> numbers = Stream.of(
                        Lever.What.PROCESS_SPEED,
                        Lever.What.JOINT_CYCLE_TIME,
                        Lever.What.CAPACITY,
                        Lever.What.ENTRY_TOP_SPEED,
                        Lever.What.COIL_LENGTH)
                .map(what -> limits.limit(what).orElseThrow())
                .filter(limit -> limit.isCrossed() && !limit.isAsItIs())
                .map(this::way);
        Stream<String> counts = limits.counts().stream()
                .filter(count -> !meets && count.sure().isPresent())
                .map(LimitsHeadline::way);
        List<String> ways = Stream.concat(numbers, counts).toList();
        if (ways.isEmpty()) {
            return now
                    + LimitWords.noneEnough(limits)
                            .orElse("No single number that was driven brings it to the target or loses it.");
        }
        return now + (meets ? "It would still meet it " : "It would meet it ") + String.join(", or ", ways)
                + ", all else as it is."
                + LimitWords.noneEnough(limits).map(none -> " " + none).orElse("");
    }

    private String cost(LineLimit limit) {
        return LeverWords.of(limits.request()).cost("; ", limit.cost());
    }

    private static String way(CountLimit count) {
        String now = " (now " + count.present() + ")";
        return switch (count.what()) {
            case CREW -> "with a crew of " + count.sure().orElseThrow() + now;
            case UNCOILERS -> "with " + count.sure().orElseThrow() + " uncoilers" + now;
        };
    }

    private String way(LineLimit limit) {
        Value value = values.value(limit);
        String now = " (now " + values.present(limit).text() + ")";
        return switch (limit.what()) {
            case PROCESS_SPEED ->
                "with the process at up to " + value.text() + " (now "
                        + values.present(limit).text() + cost(limit) + ")";
            case JOINT_CYCLE_TIME ->
                LimitWords.isTakenOff(limit)
                        ? "with " + value.text() + " off every pass of the join work"
                        : "with up to " + value.text() + " more on every pass of the join work";
            case CAPACITY -> "with an accumulator of " + value.text() + now;
            case ENTRY_TOP_SPEED -> "with an entry of at least " + value.text() + now;
            case COIL_LENGTH -> "with coils of at least " + value.text() + now;
            case REJECTS, CREW, UNCOILERS, ELEMENT ->
                throw new IllegalStateException(limit.what() + " is no way of a limit");
        };
    }
}
