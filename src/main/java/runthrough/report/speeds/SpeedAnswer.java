package runthrough.report.speeds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import runthrough.chart.speeds.OutputChart;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Chapter;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Table;
import runthrough.report.described.InputTables;
import runthrough.report.write.CsvWriter;
import runthrough.study.search.Crossing;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.speed.SpeedCurve.Peak;
import runthrough.study.speed.SpeedPoint;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** Shows what comes out at which speed. */
public final class SpeedAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT = new AnswerFormat("speeds", 2, Subject.OF_LINES, SpeedDocument.SHAPE);

    private static final String CSV = "output-against-speed.csv";

    private final SpeedCurve curve;
    private final StudyWords words;

    private SpeedAnswer(SpeedCurve curve) {
        this.curve = curve;
        this.words = StudyWords.of(
                curve.request().resultsIn(), !curve.request().line().isDeterministic());
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
                mark(),
                advice(),
                figures(),
                new Answer.Body(
                        List.of(OutputChart.of(curve)),
                        List.of(table()),
                        List.of(Chapter.of("account", "How it was computed", account())),
                        Map.of(CSV, csv())),
                SpeedDocument.SHAPE.fields(curve, words.random()),
                warnings,
                provenance);
    }

    private Headline mark() {
        String word = switch (curve.peak().where()) {
            case INSIDE -> "MOST AT " + speed(curve.peak().at().speed());
            case AT_FASTEST -> "FASTER GIVES MORE";
            case AT_SLOWEST -> "SLOWER GIVES MORE";
        };
        return new Headline(Tone.NEUTRAL, word, sentence());
    }

    private String sentence() {
        SpeedPoint best = curve.peak().at();
        String most = output(best) + ", " + mass(best);
        return switch (curve.peak().where()) {
            case INSIDE ->
                "Most comes out at a process speed of " + speed(best.speed()) + ": " + most + ". Faster gives "
                        + (isLossSure() ? "less" : "no more") + ": at " + speed(curve.to()) + " "
                        + lost() + " of that is lost.";
            case AT_FASTEST ->
                "The faster, the more comes out, up to " + speed(curve.to()) + ", where it is " + most
                        + ". Beyond lies what was not tried.";
            case AT_SLOWEST ->
                "The slower, the more comes out, down to " + speed(curve.from()) + ", where it is " + most
                        + ". Below lies what was not tried.";
        };
    }

    /** Whether it is shown that less comes out at the fastest speed than at the best. */
    private boolean isLossSure() {
        Estimate loss = curve.peak().lossAtTo();
        return loss.interval().filter(any -> words.random()).map(Interval::low).orElse(loss.mean()) > 0;
    }

    private String lost() {
        return words.texts()
                .share(curve.peak().lossAtTo().mean()
                        / curve.peak().at().output().mean());
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        SpeedPoint now = curve.present();
        advice.add("As it is, at " + speed(now.speed()) + ", " + output(now) + " come out and "
                + words.texts().share(now.shareRunThrough().mean()) + " of coil changes run through, with "
                + words.texts().mean(now.stopsPerShift()) + " stops and "
                + words.texts().time(now.lostTimePerShift().mean()) + " lost per 8 h.");
        curve.targetLost().map(this::target).ifPresent(advice::add);
        words.tooShort(curve.resolution(), curve.changes(), curve.target())
                .filter(any -> curve.targetLost().isPresent())
                .ifPresent(advice::add);
        Peak peak = curve.peak();
        if (words.random() && peak.asGoodTo() > peak.asGoodFrom()) {
            advice.add("From " + speed(peak.asGoodFrom()) + " to " + speed(peak.asGoodTo())
                    + " no difference in output is shown.");
        }
        if (curve.scaledAlike()) {
            advice.add(
                    "Coils of this line have speeds of their own: all were changed by the same factor, and the speed given"
                            + " is the fastest.");
        }
        return advice;
    }

    private String target(Crossing crossing) {
        String target = "The target of " + words.texts().share(curve.target()) + " is ";
        return switch (crossing.found()) {
            case CROSSED ->
                target + "met up to " + speed(crossing.value().orElseThrow())
                        + interval(crossing)
                                .map(ends -> " (95 % interval " + ends + ")")
                                .orElse("")
                        + ", and lost beyond.";
            case MET_THROUGHOUT -> target + "met at every speed tried.";
            case MISSED_THROUGHOUT -> target + "missed at every speed tried, even at " + speed(curve.from()) + ".";
        };
    }

    private Optional<String> interval(Crossing crossing) {
        return words.random() && crossing.low().isPresent() && crossing.high().isPresent()
                ? Optional.of(words.texts()
                        .range(
                                Kind.SPEED,
                                crossing.low().getAsDouble(),
                                crossing.high().getAsDouble()))
                : Optional.empty();
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        SpeedPoint best = curve.peak().at();
        SpeedPoint now = curve.present();
        figures.add(Figure.words(
                "most comes out at",
                speed(best.speed()),
                words.texts().share(best.shareRunThrough().mean()) + " run through"));
        figures.add(Figure.words("output there", output(best), interval(best)));
        figures.add(Figure.words("output as it is", output(now), "at " + speed(now.speed())));
        double gain = best.output().mean() / now.output().mean() - 1;
        figures.add(Figure.words("to gain", words.texts().share(gain), "of the output as it is"));
        curve.targetLost()
                .filter(crossing -> crossing.found() == Crossing.Found.CROSSED)
                .ifPresent(crossing -> figures.add(Figure.words(
                        "target met up to",
                        speed(crossing.value().orElseThrow()),
                        interval(crossing).orElse(""))));
        figures.add(Figure.words("lost at the fastest", lost(), "of the most, at " + speed(curve.to())));
        return figures;
    }

    private String interval(SpeedPoint point) {
        return words.texts().interval(Kind.RATE_LENGTH, point.output()).orElse("");
    }

    private Table table() {
        return Table.words(
                "What comes out, in the replications of the scenario",
                List.of("speed", "output", "by mass", "of rated", "run through", "stops/8 h", "lost/8 h"),
                points(curve).stream()
                        .map(point -> List.of(
                                speed(point.speed()),
                                words.texts()
                                        .of(Kind.RATE_LENGTH, point.output().mean()),
                                mass(point),
                                words.texts().share(point.utilisation().mean()),
                                words.texts().share(point.shareRunThrough().mean()),
                                words.texts().mean(point.stopsPerShift()),
                                words.texts().time(point.lostTimePerShift().mean())))
                        .toList(),
                true);
    }

    /** The points of the range, and the peak among them. */
    static List<SpeedPoint> points(SpeedCurve curve) {
        return Stream.concat(curve.points().stream(), Stream.of(curve.peak().at()))
                .distinct()
                .sorted(Comparator.comparingDouble(SpeedPoint::speed))
                .toList();
    }

    private String csv() {
        Unit speed = words.units().unit(Kind.SPEED);
        Unit output = words.units().unit(Kind.RATE_LENGTH);
        Unit mass = words.units().unit(Kind.RATE_MASS);
        List<String> header = List.of(
                "speed (" + speed.symbol() + ")",
                "factor",
                "output (" + output.symbol() + ")",
                "output low (" + output.symbol() + ")",
                "output high (" + output.symbol() + ")",
                "output by mass (" + mass.symbol() + ")",
                "share of rated",
                "share run through",
                "share low",
                "share high",
                "stops per 8 h",
                "lost per 8 h (s)");
        return CsvWriter.of(
                header,
                points(curve).stream()
                        .map(point -> Stream.of(
                                        speed.fromSi(point.speed()),
                                        point.factor(),
                                        output.fromSi(point.output().mean()),
                                        output.fromSi(end(point.output(), Interval::low)),
                                        output.fromSi(end(point.output(), Interval::high)),
                                        mass.fromSi(point.massFlow().mean()),
                                        point.utilisation().mean(),
                                        point.shareRunThrough().mean(),
                                        end(point.shareRunThrough(), Interval::low),
                                        end(point.shareRunThrough(), Interval::high),
                                        point.stopsPerShift().mean(),
                                        point.lostTimePerShift().mean())
                                .map(CsvWriter::number)
                                .toList())
                        .toList());
    }

    private double end(Estimate estimate, ToDoubleFunction<Interval> which) {
        return estimate.interval()
                .filter(any -> words.random())
                .map(which::applyAsDouble)
                .orElse(Double.NaN);
    }

    private List<String> account() {
        return List.of(
                "The rated speed of the process was changed and nothing else, and every speed met the same random numbers: the same"
                        + " random numbers, coil change by coil change. Output is strip processed over time, stops included.",
                "The best of the evenly spaced speeds was refined between its neighbours. The loss at the fastest speed is"
                        + " compared replication by replication, so that random numbers common to both do not blur it.",
                "The speed given for the target is the fastest at which the share seen reaches it; its interval turns round"
                        + " that of the share.");
    }

    private String speed(double metresPerSecond) {
        return words.texts().of(Kind.SPEED, metresPerSecond);
    }

    private String output(SpeedPoint point) {
        return words.texts().mean(Kind.RATE_LENGTH, point.output());
    }

    private String mass(SpeedPoint point) {
        return words.texts().of(Kind.RATE_MASS, point.massFlow().mean());
    }
}
