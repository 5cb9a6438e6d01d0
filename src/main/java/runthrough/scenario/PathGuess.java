package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.LineFigure;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Raw;

/** Finds the path that was probably meant by one that leads nowhere. */
final class PathGuess {

    private PathGuess() {}

    /** The nearest path into {@code root}: one that ends the same, or takes the fewest slips. */
    static Optional<String> nearest(String path, Raw root) {
        List<String> known = Stream.concat(
                        Route.all(ScenarioKeys.SCENARIO, root).map(Route::path),
                        Stream.of(LineFigure.values()).map(LineFigure::path))
                .toList();
        List<String> all = Stream.concat(
                        known.stream(),
                        Route.possible(ScenarioKeys.SCENARIO, root).map(Route::path))
                .toList();
        return endingIn(path, known)
                .or(() -> Nearest.to(path, known))
                .or(() -> endingIn(path, all))
                .or(() -> Nearest.to(path, all))
                .or(() -> Nearest.to(
                                last(path), known.stream().map(PathGuess::last).toList())
                        .flatMap(name -> endingIn(name, known)));
    }

    private static Optional<String> endingIn(String name, List<String> paths) {
        return paths.stream().filter(path -> path.endsWith("." + name)).findFirst();
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}
