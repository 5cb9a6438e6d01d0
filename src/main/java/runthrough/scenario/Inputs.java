package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runthrough.plant.LineFigure;
import runthrough.plant.SimulationRequest;
import runthrough.quantity.Unit;
import runthrough.quantity.Units;
import runthrough.scenario.grammar.FormerNames;
import runthrough.scenario.grammar.Numeric;
import runthrough.scenario.grammar.Part;
import runthrough.scenario.grammar.Range;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * The numbers of a scenario by their paths.
 *
 * @param root the whole scenario as written
 */
record Inputs(Raw root) {

    /** What is said of the run is no number of the line. */
    private static final String RUN = ScenarioKeys.RUN.name() + ".";

    /** Every number of the line: those that are written or have a finite default, then its figures. */
    List<Input> of(SimulationRequest request) {
        Stream<Input> written = Route.all(ScenarioKeys.SCENARIO, root)
                .filter(route -> !route.path().startsWith(RUN) && !HandoverKeys.isBesideTheLine(route.path()))
                .flatMap(route -> input(route).stream())
                .filter(input -> input.present().isPresent());
        return Stream.concat(
                        written,
                        Stream.of(LineFigure.values())
                                .filter(figure -> figure.of(request.line()).isPresent())
                                .map(figure -> input(figure, request)))
                .toList();
    }

    /** The number that {@code asked} names; empty when it names none, and {@code problems} says why. */
    Optional<Input> find(SimulationRequest request, Setting asked, Problems problems) {
        Optional<LineFigure> figure = LineFigure.called(asked.path());
        if (figure.isPresent()) {
            if (figure.get().of(request.line()).isEmpty()) {
                refuse(asked, "is nothing that this line has", "Name another number.", problems);
                return Optional.empty();
            }
            return Optional.of(input(figure.get(), request));
        }
        Optional<Route> route = Route.find(ScenarioKeys.SCENARIO, root, asked.path());
        if (route.isEmpty()) {
            refuseUnknown(asked, problems);
            return Optional.empty();
        }
        Optional<Input> input = route.flatMap(this::input);
        if (route.get().path().startsWith(RUN)) {
            refuse(asked, "is about how to run, not about the line", "Name a number of the line.", problems);
            return Optional.empty();
        }
        if (HandoverKeys.isBesideTheLine(route.get().path())) {
            refuse(asked, "is about the document, not about the line", "Name a number of the line.", problems);
            return Optional.empty();
        }
        if (input.isEmpty()) {
            refuseNoNumber(asked, route.get(), problems);
        }
        return input;
    }

    private Optional<Input> input(Route route) {
        Part part = route.part();
        return route.isGroup()
                ? Optional.empty()
                : part.shape().number(part.written()).map(numeric -> input(route, numeric));
    }

    private Input input(Route route, Numeric numeric) {
        Part part = route.part();
        String text = part.written().map(Raw::shown).orElse(part.byDefault());
        return new Input(
                route.path(),
                part.meaning(),
                numeric,
                numeric.si(text).map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                text,
                numeric.unit(text),
                part.written().isPresent() ? Input.Origin.WRITTEN : Input.Origin.DEFAULT,
                part.written().map(Raw::place).orElse(Place.whole(root.place().file())));
    }

    private Input input(LineFigure figure, SimulationRequest request) {
        double present = figure.of(request.line()).orElseThrow();
        Units units = Units.of(request.resultsIn());
        Unit unit = units.unitFor(figure.kind(), present);
        Range range = new Range(figure.least(request.line()), false, Double.POSITIVE_INFINITY, false);
        return new Input(
                figure.path(),
                figure.meaning(),
                new Numeric(Optional.of(FigureSettings.dimension(figure)), range, false),
                OptionalDouble.of(present),
                units.text(present, unit),
                Optional.of(unit),
                Input.Origin.FIGURE,
                root.place());
    }

    /** Reports that {@code setting} names no part of a scenario, with the nearest that does. */
    void refuseUnknown(Setting setting, Problems problems) {
        Optional<String> now = FormerNames.now(setting.path().strip());
        if (now.isPresent()) {
            refuse(setting, "is now called " + now.get(), "Write the new name.", problems);
            return;
        }
        // One that is only counted needs no remedy, which takes long to find.
        String remedy = problems.isFull()
                ? ""
                : PathGuess.nearest(setting.path(), root)
                        .map(near -> "Did you mean " + near + "?")
                        .orElse("The command inputs lists all numbers of a scenario by their paths.");
        refuse(setting, "is not a part of this scenario", remedy, problems);
    }

    private void refuseNoNumber(Setting asked, Route route, Problems problems) {
        List<String> within = Route.all(ScenarioKeys.SCENARIO, root)
                .filter(inner -> inner.path().startsWith(route.path() + "."))
                .filter(inner -> input(inner)
                        .filter(input -> input.present().isPresent())
                        .isPresent())
                .map(Route::path)
                .toList();
        refuse(
                asked,
                "is not a single number",
                within.isEmpty()
                        ? "Name a number of the line."
                        : "Name one within it: " + String.join(", ", within) + ".",
                problems);
    }

    private static void refuse(Setting setting, String rule, String remedy, Problems problems) {
        problems.error(setting.place(), setting.path(), setting.value().shown(), rule, remedy);
    }
}
