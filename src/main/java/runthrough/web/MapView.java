package runthrough.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;
import runthrough.quantity.Units;
import runthrough.report.Answer;
import runthrough.report.Provenance;
import runthrough.report.map.MapAnswer;
import runthrough.scenario.Input;
import runthrough.scenario.ScenarioReading;
import runthrough.study.StudyListener;
import runthrough.study.lever.Lever;
import runthrough.study.map.MapAxis;
import runthrough.study.map.MapPlan;
import runthrough.study.map.MapStore;
import runthrough.study.map.MapStudy;
import runthrough.study.map.MapVariants;
import runthrough.study.map.UsualRange;
import runthrough.web.job.Refusal;

/**
 * Where, over two numbers of a line, it meets its target.
 *
 * @param svg the picture
 * @param words what it shows
 */
record MapView(String svg, String words) {
    private static final int COLUMNS = 29;
    private static final int ROWS = 25;
    private static final int STRIDE = 4;

    static MapView of(PageScenario draft, String x, String y, UnitSystem system, int threads, StudyListener listener) {
        SimulationRequest request = AnswerPrecision.of(draft.asked(), 1);
        Input across = input(draft, x);
        Input up = input(draft, y);
        MapPlan plan = new MapPlan(
                axis(across, request.line(), system, COLUMNS),
                axis(up, request.line(), system, ROWS),
                across.present(),
                up.present(),
                STRIDE);
        MapStudy study = new MapStudy(
                        request,
                        AnswerPrecision.target(request),
                        plan,
                        (ofX, ofY) -> variant(draft, across, ofX, up, ofY))
                .withLimitsOf(draft.asked());
        Answer answer = MapAnswer.of(
                study.run(threads, listener, MapStore.NONE),
                List.of(),
                new Provenance("", Optional.empty(), Optional.empty()));
        String words = Stream.concat(Stream.of(answer.headline().sentence()), answer.advice().stream())
                .collect(Collectors.joining(" "));
        return new MapView(answer.body().charts().get(0).svg(), words);
    }

    private static Input input(PageScenario draft, String path) {
        return draft.file().inputs().stream()
                .filter(input -> input.path().equals(path)
                        && input.present().isPresent()
                        && input.present().getAsDouble() > 0)
                .findFirst()
                .orElseThrow(() ->
                        new Refusal(422, path + " has no value about which a map could be drawn. Choose another."));
    }

    private static MapAxis axis(Input input, Line line, UnitSystem system, int points) {
        double now = input.present().orElseThrow();
        UsualRange range =
                UsualRange.of(input.path(), line, now, input.numeric().range().greatest());
        Optional<Unit> unit = input.dimension().map(any -> Units.of(system).unitFor(FieldView.kind(input), range.to()));
        return new MapAxis(
                FieldView.name(input.path()), Lever.What.at(input.path()), unit, range.from(), range.to(), points);
    }

    private static MapVariants.Variant variant(PageScenario draft, Input across, double x, Input up, double y) {
        ScenarioReading reading = draft.file().with(List.of(across.setTo(x, "map"), up.setTo(y, "map")));
        if (reading instanceof ScenarioReading.Accepted accepted) {
            return new MapVariants.Variant.Possible(accepted.request().line());
        }
        return new MapVariants.Variant.Refused(
                ((ScenarioReading.Refused) reading).problems().get(0).reason());
    }
}
