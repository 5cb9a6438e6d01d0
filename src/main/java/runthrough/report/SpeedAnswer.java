package runthrough.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import runthrough.chart.StudyCharts;
import runthrough.quantity.Kind;
import runthrough.quantity.Unit;
import runthrough.report.ReportPage.KeyFigure;
import runthrough.study.search.Crossing;
import runthrough.study.speed.SpeedCurve;
import runthrough.study.speed.SpeedCurve.Peak;
import runthrough.study.speed.SpeedPoint;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Interval;

/** Tells what comes out at which speed. */
public final class SpeedAnswer {
    private static final String CSV = "output-against-speed.csv";

    private final SpeedCurve curve;
    private final StudyWords words;

    private SpeedAnswer(SpeedCurve curve) {
        this.curve = curve;
        this.words = StudyWords.of(
                curve.request().resultsIn(), !curve.request().line().isDeterministic());
    }

    /** The answer of {@code curve}. */
    public static StudyAnswer of(SpeedCurve curve, List<String> warnings, Provenance provenance) {
        return new SpeedAnswer(curve).answer(warnings, provenance);
    }

    private StudyAnswer answer(List<String> warnings, Provenance provenance) {
        return new StudyAnswer(
                curve.request(),
                "speeds",
                "What comes out at which process speed?",
                mark(),
                advice(),
                figures(),
                words.basis(
                        curve.request(), words.chance() ? curve.request().run().replications() : 1),
                StudyCharts.of(curve),
                List.of(table()),
                account(),
                words.chance(),
                SpeedDocument.SHAPE.fields(curve, words.chance()),
                Map.of(CSV, csv()),
                warnings,
                provenance);
    }

    private ReportPage.Mark mark() {
        String word = switch (curve.peak().where()) {
            case INSIDE -> "MOST AT " + speed(curve.peak().at().speed());
            case AT_FASTEST -> "FASTER GIVES MORE";
            case AT_SLOWEST -> "SLOWER GIVES MORE";
        };
        return new ReportPage.Mark("▲", word, "neutral", sentence(), "");
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
        return loss.interval().filter(any -> words.chance()).map(Interval::low).orElse(loss.mean()) > 0;
    }

    private String lost() {
        return words.share(
                curve.peak().lossAtTo().mean() / curve.peak().at().output().mean());
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        SpeedPoint now = curve.present();
        advice.add("As it is, at " + speed(now.speed()) + ", " + output(now) + " come out and "
                + words.share(now.shareRunThrough().mean()) + " of coil changes run through, with "
                + words.texts().mean(now.stopsPerShift()) + " stops and "
                + words.texts().time(now.lostTimePerShift().mean()) + " lost per 8 h.");
        curve.targetLost().map(this::target).ifPresent(advice::add);
        words.tooShort(curve.resolution(), curve.changes(), curve.target())
                .filter(any -> curve.targetLost().isPresent())
                .ifPresent(advice::add);
        Peak peak = curve.peak();
        if (words.chance() && peak.asGoodTo() > peak.asGoodFrom()) {
            advice.add("From " + speed(peak.asGoodFrom()) + " to " + speed(peak.asGoodTo())
                    + " no difference in output is shown.");
        }
        if (curve.scaledAlike()) {
            advice.add(
                    "Coils of this line have speeds of their own: all were changed by the same factor, and the speed told"
                            + " is the fastest.");
        }
        return advice;
    }

    private String target(Crossing crossing) {
        String target = "The target of " + words.share(curve.target()) + " is ";
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
        return words.chance() && crossing.low().isPresent() && crossing.high().isPresent()
                ? Optional.of(words.range(
                        Kind.SPEED,
                        crossing.low().getAsDouble(),
                        crossing.high().getAsDouble()))
                : Optional.empty();
    }

    private List<KeyFigure> figures() {
        List<KeyFigure> figures = new ArrayList<>();
        SpeedPoint best = curve.peak().at();
        SpeedPoint now = curve.present();
        figures.add(new KeyFigure(
                "most comes out at",
                speed(best.speed()),
                words.share(best.shareRunThrough().mean()) + " run through"));
        figures.add(new KeyFigure("output there", output(best), interval(best)));
        figures.add(new KeyFigure("output as it is", output(now), "at " + speed(now.speed())));
        double gain = best.output().mean() / now.output().mean() - 1;
        figures.add(new KeyFigure("to gain", words.share(gain), "of the output as it is"));
        curve.targetLost()
                .filter(crossing -> crossing.found() == Crossing.Found.CROSSED)
                .ifPresent(crossing -> figures.add(new KeyFigure(
                        "target met up to",
                        speed(crossing.value().orElseThrow()),
                        interval(crossing).orElse(""))));
        figures.add(new KeyFigure("lost at the fastest", lost(), "of the most, at " + speed(curve.to())));
        return figures;
    }

    private String interval(SpeedPoint point) {
        return words.texts().interval(Kind.RATE_LENGTH, point.output()).orElse("");
    }

    private Table table() {
        return new Table(
                "What comes out, in the replications of the scenario",
                List.of("speed", "output", "by mass", "of rated", "run through", "stops/8 h", "lost/8 h"),
                points(curve).stream()
                        .map(point -> List.of(
                                speed(point.speed()),
                                words.texts()
                                        .of(Kind.RATE_LENGTH, point.output().mean()),
                                mass(point),
                                words.share(point.utilisation().mean()),
                                words.share(point.shareRunThrough().mean()),
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
                                .map(CsvCells::number)
                                .toList())
                        .toList());
    }

    private double end(Estimate estimate, ToDoubleFunction<Interval> which) {
        return estimate.interval()
                .filter(any -> words.chance())
                .map(which::applyAsDouble)
                .orElse(Double.NaN);
    }

    private List<String> account() {
        return List.of(
                "The rated speed of the process was changed and nothing else, and every speed met the same random numbers: the same"
                        + " random numbers, coil change by coil change. Output is strip processed over time, stops included.",
                "The best of the evenly spaced speeds was refined between its neighbours. The loss at the fastest speed is"
                        + " compared replication by replication, so that random numbers common to both do not blur it.",
                "The speed told for the target is the fastest at which the share seen reaches it; its interval turns round"
                        + " that of the share.");
    }

    private String speed(double metresPerSecond) {
        return words.of(Kind.SPEED, metresPerSecond);
    }

    private String output(SpeedPoint point) {
        return words.texts().mean(Kind.RATE_LENGTH, point.output());
    }

    private String mass(SpeedPoint point) {
        return words.texts().of(Kind.RATE_MASS, point.massFlow().mean());
    }
}
