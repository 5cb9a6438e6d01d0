package runthrough.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import runthrough.chart.map.MapChart;
import runthrough.quantity.Kind;
import runthrough.report.Answer;
import runthrough.report.AnswerFormat;
import runthrough.report.Figure;
import runthrough.report.Headline;
import runthrough.report.Headline.Tone;
import runthrough.report.Provenance;
import runthrough.report.StudyWords;
import runthrough.report.Subject;
import runthrough.report.Texts;
import runthrough.report.described.InputTables;
import runthrough.study.TargetStatus;
import runthrough.study.map.MapAxis;
import runthrough.study.map.ShareMap;
import runthrough.study.map.ShareMap.Way;

/** Shows where a line meets the target, over two of its numbers. */
public final class MapAnswer {
    /** Of the JSON. */
    public static final AnswerFormat FORMAT = new AnswerFormat("map", 2, Subject.OF_LINES, () -> MapDocument.SHAPE);

    private final ShareMap map;
    private final StudyWords phrases;
    private final MapWords words;

    private MapAnswer(ShareMap map) {
        this.map = map;
        this.phrases =
                StudyWords.of(map.request().resultsIn(), !map.request().line().isDeterministic());
        this.words = new MapWords(map, phrases.texts());
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
                        "Where, over " + MapWords.called(words.x()) + " and " + MapWords.called(words.y())
                                + ", does the line run through?",
                        phrases.basis(
                                        map.request(),
                                        phrases.random() ? map.request().run().replications() : 1,
                                        "value tried")
                                + ", at "
                                + Texts.count(map.points().size()) + " of "
                                + Texts.count(map.plan().points()) + " points",
                        phrases.random()),
                headline(),
                new MapAdvice(words).all(),
                figures(),
                new Answer.Body(List.of(MapChart.of(map)), List.of(MapTables.points(words)), account()),
                () -> MapDocument.SHAPE.fields(map, phrases.random()),
                warnings,
                provenance);
    }

    private Headline headline() {
        double meets = map.parts().meets();
        String word = meets <= 0 ? "NOWHERE ON THE MAP" : meets >= 1 ? "EVERYWHERE ON THE MAP" : "ON PART OF THE MAP";
        return new Headline(Tone.NEUTRAL, word, sentence());
    }

    private String sentence() {
        return "The target of " + words.target() + " is met on "
                + MapWords.part(map.parts().meets()).text() + " of the map: " + MapWords.range(words.x()) + ", "
                + MapWords.range(words.y()) + ". The line as it is" + own() + " " + verdict() + ": "
                + phrases.known(map.present().share()) + " of coil changes run through.";
    }

    private String own() {
        OptionalDouble ownX = map.plan().ownX();
        OptionalDouble ownY = map.plan().ownY();
        return ownX.isPresent() && ownY.isPresent()
                ? ", at " + MapWords.text(words.x(), ownX.getAsDouble()) + " and "
                        + MapWords.text(words.y(), ownY.getAsDouble()) + ","
                : "";
    }

    private String verdict() {
        TargetStatus answer = phrases.against(map.target(), map.present().share());
        return switch (answer) {
            case MEETS -> "meets it";
            case MISSES -> "misses it";
            case UNDECIDED -> "is too near to tell";
        };
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.of("target met on", MapWords.part(map.parts().meets()), "of the map"));
        figures.add(Figure.of(
                "enough in the hand calculation on", MapWords.part(map.parts().enoughByClosedForms()), "of the map"));
        figures.add(Figure.of(
                "run through, as it is",
                words.texts().value(Kind.SHARE, map.present().share())));
        for (Way way : Way.values()) {
            MapAxis axis = words.along(way);
            map.limit(way)
                    .ifPresent(limit -> figures.add(Figure.of(
                            "target at " + MapWords.called(axis),
                            MapWords.value(axis, limit),
                            map.limitAlong(way).isPresent()
                                    ? "the other as it is"
                                    : "the other as it is; read off the grid, ± "
                                            + MapWords.text(axis, MapAdvice.OFF * axis.step()))));
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
}
