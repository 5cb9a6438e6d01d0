package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runthrough.chart.StudyCharts;
import runthrough.study.sizing.Sizing;
import runthrough.study.statistics.RelativeHalfWidth;

/** Tells how large the accumulator must be. */
public final class SizingAnswer {
    private static final String CURVE = "share-against-capacity.csv";
    private static final String REMEDIES = "what-would-free-it.csv";

    private final Sizing sizing;
    private final StudyWords words;

    private SizingAnswer(Sizing sizing) {
        this.sizing = sizing;
        this.words = StudyWords.of(sizing.request().resultsIn(), sizing.chance());
    }

    /** The answer of {@code sizing}. */
    public static StudyAnswer of(Sizing sizing, List<String> warnings, Provenance provenance) {
        return new SizingAnswer(sizing).answer(warnings, provenance);
    }

    private StudyAnswer answer(List<String> warnings, Provenance provenance) {
        Optional<Remedies> remedies = sizing.noneEnough().map(none -> new Remedies(none, words));
        SizeWords sizeWords = new SizeWords(sizing, words);
        SizingCurve curve = new SizingCurve(sizing, words);
        List<Table> tables = new ArrayList<>();
        remedies.map(Remedies::table).ifPresent(tables::add);
        if (!sizing.curve().isEmpty()) {
            tables.add(curve.table());
        }
        return new StudyAnswer(
                sizing.request(),
                "size",
                "How large must the accumulator be?",
                new SizingHeadline(sizeWords).mark(),
                advice(),
                new SizingFigures(sizeWords).all(),
                words.basis(sizing.request(), sizing.replications()),
                StudyCharts.of(sizing),
                tables,
                account(),
                sizing.chance(),
                SizingDocument.SHAPE.fields(sizing, sizing.chance()),
                Map.of(CURVE, curve.csv(), REMEDIES, Remedies.csv(remedies, words)),
                warnings,
                provenance);
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        if (sizing.answer() == Sizing.Answer.NOT_APPLICABLE) {
            advice.add(
                    "To size one, give the scenario an accumulator of any size and joins instead of threading anew.");
        }
        sizing.noneEnough().ifPresent(none -> advice.addAll(new Remedies(none, words).advice()));
        sizing.capacity().filter(found -> sizing.chance()).ifPresent(found -> {
            advice.add(
                    found.sure().isEmpty() ? tooShort() : safeSide(found.sure().getAsDouble()));
            if (sizing.fall() > 0) {
                advice.add("A larger accumulator did not always do better in this line, by up to "
                        + words.share(sizing.fall()) + " of coil changes under the same random numbers.");
            }
        });
        sizing.interval()
                .filter(interval -> !interval.reached())
                .map(this::notReached)
                .ifPresent(advice::add);
        return advice;
    }

    private String tooShort() {
        return "This run is too short to show the target met with any capacity"
                + sizing.resolution()
                        .leastToShow()
                        .map(number -> ": it takes at least " + Texts.count(number)
                                + " coil changes to show a share of " + words.share(sizing.target()))
                        .orElse("")
                + ". Take the capacity as the best guess.";
    }

    private String safeSide(double sure) {
        return "To be on the safe side, build the upper end of the interval: with " + words.length(sure)
                + " the target is shown to be met.";
    }

    private String notReached(RelativeHalfWidth interval) {
        String there = interval.halfWidth().isPresent()
                ? "The interval is " + words.share(interval.halfWidth().getAsDouble())
                        + " of the capacity to either side"
                : "The interval has an open end";
        return there + ", not the " + words.share(interval.asked()) + " asked for; " + interval.replications()
                + " replications were run"
                + (interval.wouldDo().isPresent()
                        ? ", about " + Texts.count(interval.wouldDo().getAsInt()) + " would do."
                        : ".");
    }

    private List<String> account() {
        List<String> account = new ArrayList<>();
        account.add(
                "Only the capacity was changed, by what is adjustable of the accumulator; reserve and levels given in"
                        + " metres stayed. Every capacity met the same random numbers, coil change by coil change.");
        if (sizing.chance()) {
            account.add(
                    "The capacity told is the smallest at which the share seen reaches the target. Its interval turns"
                            + " round that of the share: the upper end is the smallest capacity at which the whole 95 % interval of"
                            + " the share is at or above the target, the lower end the smallest at which it is not wholly below."
                            + " Replications were added until that interval was as narrow as asked for, or so many as allowed.");
        } else {
            account.add("Nothing is left to chance in this line, so the capacity is exact, but for a ten-thousandth.");
        }
        return account;
    }
}
