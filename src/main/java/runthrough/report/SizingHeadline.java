package runthrough.report;

import runthrough.study.Answer;
import runthrough.study.sizing.Size;
import runthrough.study.sizing.Sizing;

/** Says how large the accumulator must be, and whether it is. */
final class SizingHeadline {
    private final Sizing sizing;
    private final StudyWords words;
    private final SizeWords sizeWords;

    SizingHeadline(SizeWords sizeWords) {
        this.sizing = sizeWords.sizing();
        this.words = sizeWords.words();
        this.sizeWords = sizeWords;
    }

    ReportPage.Mark mark() {
        return switch (sizing.answer()) {
            case FOUND ->
                switch (present()) {
                    case MEETS -> new ReportPage.Mark("✓", "LARGE ENOUGH", "runs-through", found(), "");
                    case MISSES -> new ReportPage.Mark("✗", "TOO SMALL", "stops", found(), "");
                    case UNDECIDED -> new ReportPage.Mark("◆", "MARGINAL", "marginal", found(), "");
                };
            case NONE_IS_ENOUGH ->
                new ReportPage.Mark(
                        "✗",
                        "NO SIZE IS ENOUGH",
                        "stops",
                        new Remedies(sizing.noneEnough().orElseThrow(), words).reason(),
                        "");
            case NOT_APPLICABLE ->
                new ReportPage.Mark(
                        "◆",
                        "NOTHING TO SIZE",
                        "marginal",
                        "Entry and process of this line are one strip, and every coil change stops it: there is no"
                                + " accumulator.",
                        "");
        };
    }

    /** Whether the accumulator as it is meets the target. */
    private Answer present() {
        return sizing.present()
                .flatMap(Sizing.Point::share)
                .map(share -> words.against(sizing.target(), share))
                .orElse(Answer.MISSES);
    }

    private String found() {
        Size smallest = sizing.smallest().orElseThrow();
        String text = "The smallest accumulator with which " + words.share(sizing.target())
                + " of coil changes run through holds " + words.length(smallest.capacity())
                + sizeWords
                        .capacities()
                        .map(ends -> " (95 % interval " + ends + ")")
                        .orElse("");
        return text + setting(smallest) + ". " + asItIs();
    }

    /** What a designer would set it to, with the interval, where that is not the capacity itself. */
    private String setting(Size size) {
        return sizeWords
                .setTo(size)
                .map(setting -> ": " + setting
                        + sizeWords.settings().map(ends -> " (" + ends + ")").orElse(""))
                .orElse("");
    }

    private String asItIs() {
        Sizing.Point now = sizing.present().orElseThrow();
        String seen =
                now.share().map(share -> "runs through " + words.known(share)).orElse("cannot be run");
        return "The present one, " + words.length(now.size().capacity()) + ", " + seen + ".";
    }
}
