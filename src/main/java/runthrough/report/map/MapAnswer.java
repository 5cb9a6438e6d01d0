package runthrough.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runthrough.chart.map.MapChart;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Chapter;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Texts;
import runthrough.report.described.InputTables;
import runthrough.report.write.CsvWriter;
import runthrough.study.TargetStatus;
import runthrough.study.map.MapAxis;
import runthrough.study.map.MapPoint;
import runthrough.study.map.ShareMap;
import runthrough.study.map.ShareMap.Parts;
import runthrough.study.map.ShareMap.Way;
import runthrough.study.statistics.Interval;

/** Shows where a line meets the target, over two of its numbers. */
public final class MapAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT = new AnswerFormat("map", 2, Subject.OF_LINES, MapDocument.SHAPE);

    private static final String CSV = "map-points.csv";
    /** A part of the map that is hardly there is not worth a word. */
    private static final double HARDLY = 0.005;

    private final ShareMap map;
    private final StudyWords words;
    private final MapAxis x;
    private final MapAxis y;
    private final Parts parts;

    private MapAnswer(ShareMap map) {
        this.map = map;
        this.words =
                StudyWords.of(map.request().resultsIn(), !map.request().line().isDeterministic());
        this.x = map.plan().x();
        this.y = map.plan().y();
        this.parts = map.parts();
    }

    /** The answer of {@code map}. */
    public static Answer of(ShareMap map, List<String> warnings, Provenance provenance) {
        return new MapAnswer(map).answer(warnings, provenance);
    }

    private Answer answer(List<String> warnings, Provenance provenance) {
        return new Answer(
                new Answer.Question(
                        FORMAT,
                        InputTables.subject(map.request(), provenance),
                        "Where, over " + called(x) + " and " + called(y) + ", does the line run through?",
                        words.basis(
                                        map.request(),
                                        words.random() ? map.request().run().replications() : 1,
                                        "value tried")
                                + ", at "
                                + Texts.count(map.points().size()) + " of "
                                + Texts.count(map.plan().points()) + " points",
                        words.random()),
                mark(),
                advice(),
                figures(),
                new Answer.Body(
                        List.of(MapChart.of(map)),
                        List.of(),
                        List.of(Chapter.of("account", "How it was computed", account())),
                        Map.of(CSV, csv())),
                MapDocument.SHAPE.fields(map, words.random()),
                warnings,
                provenance);
    }

    private Headline mark() {
        String word = parts.meets() <= 0
                ? "NOWHERE ON THE MAP"
                : parts.meets() >= 1
                        ? "EVERYWHERE ON THE MAP"
                        : "ON " + words.texts().share(round(parts.meets())) + " OF THE MAP";
        return new Headline(Tone.NEUTRAL, word, sentence());
    }

    private String sentence() {
        return "For " + called(x) + " from " + x.text(x.from()) + " to " + x.text(x.to()) + " and " + called(y)
                + " from "
                + y.text(y.from()) + " to " + y.text(y.to()) + ", the target of "
                + words.texts().share(map.target())
                + " is met on "
                + words.texts().share(round(parts.meets())) + " of the map. The line as it is" + own() + " " + verdict()
                + ": "
                + words.known(map.present().share()) + " of coil changes run through.";
    }

    private String own() {
        OptionalDouble ownX = map.plan().ownX();
        OptionalDouble ownY = map.plan().ownY();
        return ownX.isPresent() && ownY.isPresent()
                ? ", at " + x.text(ownX.getAsDouble()) + " and " + y.text(ownY.getAsDouble()) + ","
                : "";
    }

    private String verdict() {
        TargetStatus answer = words.against(map.target(), map.present().share());
        return switch (answer) {
            case MEETS -> "meets it";
            case MISSES -> "misses it";
            case UNDECIDED -> "is too near to tell";
        };
    }

    private List<String> advice() {
        List<String> advice = new ArrayList<>();
        if (map.own().isPresent()) {
            advice.add(fromOwn(true));
            advice.add(fromOwn(false));
        } else {
            advice.add("The line as it is does not lie on this map.");
        }
        if (map.request().line().practice().isOneStrip()) {
            advice.add("Without an accumulator every coil change stops the process, whatever the numbers.");
        } else {
            againstHandCalculation().forEach(advice::add);
        }
        if (parts.possible() < 1) {
            advice.add(notPossible());
        }
        return advice;
    }

    /** How far the line is from losing or meeting the target along one axis. */
    private String fromOwn(boolean alongX) {
        MapAxis axis = alongX ? x : y;
        double now = (alongX ? map.plan().ownX() : map.plan().ownY()).orElseThrow();
        boolean meets = map.shares()
                        .at(map.own().orElseThrow().x(), map.own().orElseThrow().y())
                >= map.target();
        List<String> limits = Stream.of(Way.values())
                .filter(way -> way.isAlongX() == alongX)
                .flatMapToDouble(way -> map.limit(way).stream())
                .mapToObj(limit -> "at about " + axis.text(limit) + ", " + axis.text(Math.abs(limit - now))
                        + (limit < now ? " less" : " more"))
                .toList();
        String changed = "With " + called(axis) + " changed alone, the target is ";
        return limits.isEmpty()
                ? changed + (meets ? "met" : "missed") + " all the way from " + axis.text(axis.from()) + " to "
                        + axis.text(axis.to()) + "."
                : changed + (meets ? "lost " : "met ") + String.join(", or ", limits) + ".";
    }

    /** Where the closed forms say something else than the simulation, and why. */
    private List<String> againstHandCalculation() {
        List<String> said = new ArrayList<>();
        if (parts.closedFormsOnly() > HARDLY) {
            said.add("On " + words.texts().share(round(parts.closedFormsOnly()))
                    + " of the map the hand calculation finds enough, and yet the target is missed: "
                    + reason() + cause());
        }
        if (parts.simulatedOnly() > HARDLY) {
            said.add("On " + words.texts().share(round(parts.simulatedOnly()))
                    + " of the map the target is met although the hand calculation does not find enough: it holds the"
                    + " whole line against its hardest coil and against changes that follow one another at their mean"
                    + " times, and a target below 100 % leaves some coil changes to fail.");
        }
        if (said.isEmpty()) {
            said.add("The hand calculation draws the same line as the simulation.");
        }
        return said;
    }

    private String reason() {
        return words.random()
                ? "it knows mean times only, and " + words.texts().share(map.target())
                        + " of coil changes must run through, also those with long joints, rejects or late coils."
                : "it takes one coil change by itself, and does not see what one leaves to the next.";
    }

    private String cause() {
        return map.causeMissedByClosedForms()
                .map(cause -> " There most fail by this cause: " + cause.words() + ".")
                .orElse("");
    }

    private String notPossible() {
        String example = map.points().stream()
                .map(MapPoint::refusal)
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
        return "On " + words.texts().share(round(1 - parts.possible())) + " of the map no line can be so, such as: "
                + example + ".";
    }

    /** To a thousandth: no map is finer. */
    private static double round(double share) {
        double rounded = Math.rint(share * 1000) / 1000;
        return share > 0 && rounded == 0 ? 0.001 : share < 1 && rounded == 1 ? 0.999 : rounded;
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.words("target met on", words.texts().share(round(parts.meets())), "of the map"));
        figures.add(Figure.words(
                "enough in the hand calculation on",
                words.texts().share(round(parts.enoughByClosedForms())),
                "of the map"));
        figures.add(Figure.words(
                "the line as it is", words.texts().share(map.present().share().mean()), "run through"));
        for (Way way : Way.values()) {
            OptionalDouble limit = map.limit(way);
            if (limit.isPresent()) {
                MapAxis axis = way.isAlongX() ? x : y;
                figures.add(Figure.words(
                        "target at " + called(axis), axis.text(limit.getAsDouble()), "the other as it is"));
            }
        }
        return figures;
    }

    private List<String> account() {
        return List.of(
                "Every point is a line of its own with the two numbers in it, checked like any scenario and run in full, all"
                        + " under the same random numbers, coil change by coil change.",
                map.plan().stride() == 1
                        ? "Every point was run in full."
                        : "First every " + map.plan().stride()
                                + "th point was run, then those between them wherever the answer changes: where the share"
                                + " differs, where the target or the closed-form limit is crossed, where a line becomes"
                                + " impossible. Where it does not change, what lies between is interpolated. A point plainly far from"
                                + " the target, as a fifth of the replications shows, was not run further.",
                "The closed-form limit is where the closed forms, with mean times and for the hardest coil, leave no margin"
                        + " of capacity, refill or preparation, whichever is least.");
    }

    private String csv() {
        List<String> header = List.of(
                x.name() + x.unit().map(unit -> " (" + unit.symbol() + ")").orElse(""),
                y.name() + y.unit().map(unit -> " (" + unit.symbol() + ")").orElse(""),
                "share run through",
                "share low",
                "share high",
                "coil changes",
                "spare capacity",
                "spare refill",
                "spare preparation",
                "not possible because");
        return CsvWriter.of(header, map.points().stream().map(this::row).toList());
    }

    private List<String> row(MapPoint point) {
        List<String> cells = new ArrayList<>(List.of(
                CsvWriter.number(x.shown(x.value(point.column()))), CsvWriter.number(y.shown(y.value(point.row())))));
        Optional<MapPoint.Measured> measured = point.measured();
        Optional<Interval> interval =
                measured.flatMap(found -> found.share().interval()).filter(any -> words.random());
        cells.add(measured.map(found -> CsvWriter.number(found.share().mean())).orElse(""));
        cells.add(interval.map(ends -> CsvWriter.number(ends.low())).orElse(""));
        cells.add(interval.map(ends -> CsvWriter.number(ends.high())).orElse(""));
        cells.add(measured.map(found -> Long.toString(found.changes())).orElse(""));
        cells.add(measured.map(found -> CsvWriter.number(found.closedForm().capacity()))
                .orElse(""));
        cells.add(measured.map(found -> CsvWriter.number(found.closedForm().refill()))
                .orElse(""));
        cells.add(measured.map(found -> CsvWriter.number(found.closedForm().preparation()))
                .orElse(""));
        cells.add(CsvWriter.text(point.refusal()));
        return cells;
    }

    /** How the number along an axis is called in a sentence. */
    private static String called(MapAxis axis) {
        return axis.name().contains(".") ? axis.name() : axis.name().replace('-', ' ');
    }
}
