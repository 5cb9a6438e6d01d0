package runthrough.report.sizing;

import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.study.sizing.Sizing;

/** Says how large the accumulator must be, and whether it is. */
final class SizingHeadline {
    private final Sizing sizing;
    private final SizeWords words;

    SizingHeadline(SizeWords words) {
        this.sizing = words.sizing();
        this.words = words;
    }

    /** Whether the present accumulator misses the target although a smaller one meets it. */
    private boolean isBeyond() {
        double now = sizing.present().orElseThrow().size().capacity();
        return words.smallest().orElse(Double.POSITIVE_INFINITY) < now;
    }

    Headline headline() {
        return switch (sizing.answer()) {
            case FOUND ->
                switch (words.present()) {
                    case MEETS -> new Headline(Tone.RUNS_THROUGH, "LARGE ENOUGH", found());
                    case MISSES -> new Headline(Tone.STOPS, isBeyond() ? "TOO LARGE" : "TOO SMALL", found());
                    case UNDECIDED -> new Headline(Tone.MARGINAL, "MARGINAL", found());
                };
            case NONE_IS_ENOUGH -> {
                String reason = Remedies.of(words).orElseThrow().reason();
                yield words.strands().isPresent()
                        ? onlyByStrands(reason)
                        : new Headline(Tone.STOPS, "NO SIZE IS ENOUGH", reason);
            }
            case NOT_APPLICABLE ->
                new Headline(
                        Tone.MARGINAL,
                        "NOTHING TO SIZE",
                        "Entry and process of this line are one strip, and every coil change stops it: there is no"
                                + " accumulator.");
        };
    }

    /** More strands fill faster where the carriage sets the rate; a longer stroke does not. */
    private Headline onlyByStrands(String reason) {
        return new Headline(
                isBeyond() ? Tone.MARGINAL : Tone.STOPS,
                isBeyond() ? "TOO LARGE" : "TOO SMALL",
                smallest()
                        + words.strands()
                                .map(strands -> strands.known() + ": "
                                        + words.ofStrands(strands.si()).orElseThrow() + ". ")
                                .orElseThrow()
                        + asItIs() + " With another stroke no size is enough. " + reason);
    }

    private String smallest() {
        return "The smallest accumulator with which " + Texts.target(sizing.target())
                + " of coil changes run through holds ";
    }

    private String found() {
        String setting = words.set()
                .map(value ->
                        ": " + SizeWords.setting(sizing.smallest().orElseThrow().form()) + " of " + value.known())
                .orElse("");
        return smallest()
                + words.strands()
                        .map(strands -> strands.known() + ": "
                                + words.ofStrands(strands.si()).orElseThrow() + ". With another stroke it holds ")
                        .orElse("")
                + interval(words.capacity().orElseThrow()) + setting + ". "
                + withoutStop()
                + asItIs()
                + new FailuresNow(sizing, words.present())
                        .sentence()
                        .map(most -> " " + most)
                        .orElse("");
    }

    /** What the second target asks for, where that is more. */
    private String withoutStop() {
        return sizing.withoutStop()
                .filter(found -> !(found.answer().orElse(Double.POSITIVE_INFINITY)
                        <= words.smallest().orElseThrow()))
                .map(found -> "For "
                        + Texts.target(
                                sizing.request().run().targetWithoutStop().orElseThrow())
                        + " without a stop "
                        + (found.answer().isPresent()
                                ? "it has to hold "
                                        + words.tried().text(found.answer().getAsDouble()) + ". "
                                : "no capacity is enough. "))
                .orElse("");
    }

    private static String interval(Value value) {
        return value.text()
                + value.range().map(ends -> " (95 % interval " + ends + ")").orElse("");
    }

    private String asItIs() {
        Sizing.Point now = sizing.present().orElseThrow();
        String seen = now.share()
                .map(share -> "runs through " + words.words().known(share))
                .orElse("cannot be run");
        return "The present one, " + words.texts().length(now.size().capacity()) + ", " + seen + ".";
    }
}
