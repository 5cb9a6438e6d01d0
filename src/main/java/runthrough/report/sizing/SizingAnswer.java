package runthrough.report.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.chart.sizing.CapacityChart;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Rounding;
import runthrough.quantity.Unit;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Provenance;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.TableMaker;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.described.InputTables;
import runthrough.study.sizing.Sizing;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.RelativeHalfWidth;

/** How large the accumulator must be. */
public final class SizingAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT = new AnswerFormat("size", 3, Subject.OF_LINES, () -> SizingDocument.SHAPE);

    private static final String CURVE = "share-against-capacity.csv";

    private final Sizing sizing;
    private final SizeWords words;
    private final Texts texts;

    private SizingAnswer(Sizing sizing) {
        this.sizing = sizing;
        this.words = SizeWords.of(sizing);
        this.texts = words.texts();
    }

    /** The answer of {@code sizing}. */
    public static Answer of(Sizing sizing, List<String> warnings, Provenance provenance) {
        return new SizingAnswer(sizing).answer(warnings, provenance);
    }

    private Answer answer(List<String> warnings, Provenance provenance) {
        Optional<Remedies> remedies = Remedies.of(words);
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(sizing.request(), provenance),
                        "How large must the accumulator be?",
                        words.words().basis(sizing.request(), sizing.replications(), "value tried"),
                        sizing.chance()),
                new SizingHeadline(words).headline(),
                advice(remedies),
                new SizingFigures(words).all(),
                new Answer.Body(
                        CapacityChart.of(sizing),
                        List.of(Remedies.table(remedies, sizing.request().resultsIn()), curve()),
                        account()),
                () -> SizingDocument.SHAPE.fields(sizing, sizing.chance()),
                warnings,
                provenance);
    }

    private Table curve() {
        Optional<Sizing.Point> adjustable = sizing.curve().stream()
                .filter(point -> SizeWords.adjusted(point.size()).isPresent())
                .findFirst();
        // Capacities may lie closer together than three digits show.
        boolean apart = sizing.curve().stream()
                        .map(point -> words.length().number(point.size().capacity()))
                        .distinct()
                        .count()
                == sizing.curve().size();
        Notation length = apart ? words.length() : words.length().with(Rounding.GIVEN);
        TableMaker<Sizing.Point> table = TableMaker.<Sizing.Point>of(
                        "Share run through against capacity, in the replications of the scenario")
                .intoFile(CURVE)
                .number("capacity", length, point -> point.size().capacity());
        adjustable.ifPresentOrElse(
                any -> table.number(SizeWords.set(any.size().form()), length, SizingAnswer::setting),
                () -> table.fileNumber("setting", length, SizingAnswer::setting));
        return table.estimate("run through", Notation.SHARE, sizing.chance(), "refused", this::share)
                .number("lost in a year", Notation.of(Unit.HOUR), SizingAnswer::lostTime)
                .fileNumber("greatest share so far", Notation.SHARE, Sizing.Point::envelope)
                .of(sizing.curve());
    }

    private static double lostTime(Sizing.Point point) {
        return point.lostTime().map(Estimate::mean).orElse(Double.NaN);
    }

    private static double setting(Sizing.Point point) {
        return point.size().form().adjustable().orElseThrow().metres();
    }

    private Value share(Sizing.Point point) {
        return point.share().map(share -> texts.value(Kind.SHARE, share)).orElse(Value.of(Double.NaN, Notation.SHARE));
    }

    private List<String> advice(Optional<Remedies> remedies) {
        List<String> advice = new ArrayList<>();
        if (sizing.answer() == Sizing.Answer.NOT_APPLICABLE) {
            advice.add(
                    "To size one, give the scenario an accumulator of any size and joins instead of threading anew.");
        }
        new FailuresNow(sizing, words.present()).advice().ifPresent(advice::add);
        remedies.ifPresent(found -> advice.addAll(found.advice()));
        sizing.capacity().filter(found -> sizing.chance()).ifPresent(found -> {
            advice.add(
                    found.sure().isEmpty() ? tooShort() : safeSide(found.value().orElseThrow()));
            if (sizing.fall() > 0) {
                advice.add("A larger accumulator did not always do better in this line, by up to "
                        + texts.share(sizing.fall()) + " of coil changes under the same random numbers.");
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
                                + " coil changes to show a share of " + Texts.target(sizing.target()))
                        .orElse("")
                + ". Take the capacity as the best guess, or run more replications.";
    }

    private String safeSide(double seen) {
        return "With the capacity given the target is shown to be met; the share seen meets it from "
                + texts.length(seen) + " on.";
    }

    private String notReached(RelativeHalfWidth interval) {
        String there = interval.halfWidth().isPresent()
                ? "The interval is " + texts.share(interval.halfWidth().getAsDouble())
                        + " of the capacity to either side"
                : "The interval has an open end";
        return there + ", more than " + texts.share(interval.asked()) + "; " + interval.replications()
                + " replications were run"
                + (interval.wouldDo().isPresent()
                        ? ", about " + Texts.about(interval.wouldDo().getAsInt()) + " would do."
                        : ".");
    }

    private List<String> account() {
        List<String> account = new ArrayList<>();
        account.add(
                "Only the capacity was changed, by what is adjustable of the accumulator; reserve and levels given in"
                        + " metres stayed. Every capacity met the same random numbers, coil change by coil change.");
        if (sizing.chance()) {
            account.add(
                    "The capacity given is the smallest at which the target is shown to be met: the whole 95 % interval of the"
                            + " share is at or above it. That is the upper end of the interval of the capacity; its lower end is the"
                            + " smallest at which that interval is not wholly below. Where a precision is asked for, replications are"
                            + " added until the interval is as narrow, or as many as allowed.");
        } else {
            account.add("Nothing in this line is random, so the capacity is exact to one part in ten thousand.");
        }
        return account;
    }
}
