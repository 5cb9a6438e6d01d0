package runthrough.report.sizing;

import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Value;
import runthrough.study.TargetStatus;
import runthrough.study.sizing.Sizing;

/** Says how large the accumulator must be, and whether it is. */
final class SizingHeadline {
    private final Sizing sizing;
    private final SizeWords words;

    SizingHeadline(SizeWords words) {
        this.sizing = words.sizing();
        this.words = words;
    }

    Headline headline() {
        return switch (sizing.answer()) {
            case FOUND ->
                switch (present()) {
                    case MEETS -> new Headline(Tone.RUNS_THROUGH, "LARGE ENOUGH", found());
                    case MISSES -> new Headline(Tone.STOPS, "TOO SMALL", found());
                    case UNDECIDED -> new Headline(Tone.MARGINAL, "MARGINAL", found());
                };
            case NONE_IS_ENOUGH ->
                new Headline(
                        Tone.STOPS,
                        "NO SIZE IS ENOUGH",
                        new Remedies(sizing.noneEnough().orElseThrow(), words.texts()).reason());
            case NOT_APPLICABLE ->
                new Headline(
                        Tone.MARGINAL,
                        "NOTHING TO SIZE",
                        "Entry and process of this line are one strip, and every coil change stops it: there is no"
                                + " accumulator.");
        };
    }

    /** Whether the accumulator as it is meets the target. */
    private TargetStatus present() {
        return sizing.present()
                .flatMap(Sizing.Point::share)
                .map(share -> words.words().against(sizing.target(), share))
                .orElse(TargetStatus.MISSES);
    }

    private String found() {
        String setting = words.set()
                .map(value ->
                        ": " + SizeWords.setting(sizing.smallest().orElseThrow().form()) + " of " + value.known())
                .orElse("");
        return "The smallest accumulator with which " + words.texts().share(sizing.target())
                + " of coil changes run through holds "
                + interval(words.capacity().orElseThrow()) + setting + ". "
                + asItIs();
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
