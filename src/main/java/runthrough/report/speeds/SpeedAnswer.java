package runthrough.report.speeds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.chart.speeds.OutputChart;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Figure;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Texts;
import runthrough.report.Value;
import runthrough.report.described.InputTables;
import runthrough.report.lever.LeverWords;
import runthrough.study.search.Crossing;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.speed.SpeedCurve.NotPossible;
import runthrough.study.speed.SpeedCurve.Peak;
import runthrough.study.speed.SpeedPoint;

/** Shows what comes out at which speed. */
public final class SpeedAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT =
            new AnswerFormat("speeds", 2, Subject.OF_LINES, () -> SpeedDocument.SHAPE);

    /** A range of speeds narrower than this, as a part of the best speed, is one speed to whoever sets it. */
    private static final double WORTH_SAYING = 0.01;

    private final SpeedCurve curve;
    private final StudyWords words;
    private final Texts texts;
    private final SpeedHeadline headline;

    private SpeedAnswer(SpeedCurve curve) {
        this.curve = curve;
        this.words = StudyWords.of(
                curve.request().resultsIn(), !curve.request().line().isDeterministic());
        this.texts = words.texts();
        this.headline = new SpeedHeadline(curve, texts);
    }

    /** The answer of {@code curve}. */
    public static Answer of(SpeedCurve curve, List<String> warnings, Provenance provenance) {
        return new SpeedAnswer(curve).answer(warnings, provenance);
    }

    private Answer answer(List<String> warnings, Provenance provenance) {
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(curve.request(), provenance),
                        "What comes out at which process speed?",
                        words.basis(
                                curve.request(),
                                words.random() ? curve.request().run().replications() : 1,
                                "value tried"),
                        words.random()),
                headline.headline(),
                advice(),
                figures(),
                new Answer.Body(List.of(OutputChart.of(curve)), List.of(SpeedTables.of(curve, texts)), account()),
                () -> SpeedDocument.SHAPE.fields(curve, words.random()),
                warnings,
                provenance);
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        SpeedPoint now = curve.present();
        advice.add(
                "As it is, at " + texts.speed(now.speed()) + ", " + output(now).text() + " come out and "
                        + texts.share(now.shareRunThrough().mean()) + " of coil changes run through, with "
                        + texts.mean(now.stopsPerShift()) + " stops and "
                        + texts.time(now.lostTimePerShift().mean()) + " lost per 8 h.");
        notPossible().ifPresent(advice::add);
        curve.targetLost().map(this::target).ifPresent(advice::add);
        words.tooShort(curve.resolution(), curve.changes(), curve.target())
                .filter(any -> curve.targetLost().isPresent())
                .ifPresent(advice::add);
        Peak peak = curve.peak();
        if (words.random()
                && peak.asGoodTo() - peak.asGoodFrom()
                        > WORTH_SAYING * peak.at().speed()) {
            advice.add("From " + texts.speed(peak.asGoodFrom()) + " to " + texts.speed(peak.asGoodTo())
                    + " no difference in output is shown.");
        }
        if (curve.scaledAlike()) {
            advice.add(
                    "Coils of this line have speeds of their own: all were changed by the same factor, and the speed given"
                            + " is the fastest.");
        }
        return advice;
    }

    /** Where the line cannot be run, and why; the table says it of each speed. */
    private Optional<String> notPossible() {
        List<NotPossible> all = curve.notPossible();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        NotPossible first = all.get(0);
        boolean isEnd = first.speed() > curve.to();
        String where = isEnd
                ? "Faster than " + texts.speed(curve.to()) + " the line is not feasible"
                : "The line cannot be run at " + all.size() + " of the speeds tried, " + texts.speed(first.speed())
                        + (all.size() > 1
                                ? " to " + texts.speed(all.get(all.size() - 1).speed())
                                : "");
        return Optional.of(where + "; at " + texts.speed(first.speed()) + ": " + first.why());
    }

    private String target(Crossing crossing) {
        String target = "The target of " + Texts.target(curve.target()) + " is ";
        return switch (crossing.answered()) {
            case CROSSED ->
                target + "met up to " + limit(crossing).text()
                        + limit(crossing)
                                .range()
                                .map(ends -> " (95 % interval " + ends + ")")
                                .orElse("")
                        + (crossing.canBeShown() ? "" : LeverWords.NOT_SHOWN)
                        + ", and lost beyond.";
            case MET_THROUGHOUT ->
                target + "met at every speed tried"
                        + (curve.notPossible().isEmpty() ? "." : " at which the line can be run.");
            case MISSED_THROUGHOUT ->
                crossing.possible().isPresent()
                        ? target + "shown to be met at no speed tried, nor is it shown to be missed at all of them."
                        : target + "missed at every speed tried, even at " + texts.speed(curve.from()) + ".";
        };
    }

    private List<Figure> figures() {
        SpeedPoint best = curve.peak().at();
        SpeedPoint now = curve.present();
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.of(
                "most comes out at",
                SpeedTables.speed(texts, best.speed()),
                texts.share(best.shareRunThrough().mean()) + " run through"));
        figures.add(Figure.of("output there", output(best), yieldAt(best)));
        figures.add(Figure.of("output as it is", output(now), "at " + texts.speed(now.speed()) + ", " + yieldAt(now)));
        double gain = best.output().mean() / now.output().mean() - 1;
        figures.add(Figure.of("gain", Value.of(gain, Notation.SHARE), "of the output as it is"));
        curve.targetLost()
                .filter(crossing -> crossing.answered() == Crossing.Found.CROSSED)
                .ifPresent(crossing -> figures.add(Figure.of("target met up to", limit(crossing))));
        if (curve.peak().where() != SpeedCurve.Where.AT_FASTEST) {
            figures.add(Figure.of(
                    "lost at the fastest",
                    Value.of(headline.lostAtFastest(), Notation.SHARE),
                    "of the most, at " + texts.speed(curve.peak().fastest())));
        }
        return figures;
    }

    private String yieldAt(SpeedPoint point) {
        return "yield " + texts.share(point.goodShare().mean());
    }

    private Value output(SpeedPoint point) {
        return texts.value(Kind.RATE_LENGTH, point.output());
    }

    /** The fastest speed that meets the target. */
    private Value limit(Crossing crossing) {
        double speed = crossing.answer().orElseThrow();
        return texts.found(texts.notation(Kind.SPEED, speed).atMost(), speed, crossing.low(), crossing.high());
    }

    private List<String> account() {
        return List.of(
                "The rated speed of the process was changed and nothing else, and every speed met the same random numbers,"
                        + " coil change by coil change. Output is strip processed over time, stops included.",
                "The best of the evenly spaced speeds was refined between its neighbours. The loss at the fastest speed is"
                        + " compared replication by replication, so that random numbers common to both do not blur it.",
                "The speed given for the target is the fastest at which the target is shown to be met; its interval turns round"
                        + " that of the share.");
    }
}
