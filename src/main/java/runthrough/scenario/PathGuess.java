package runthrough.scenario;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.plant.LineFigure;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Part;
import runthrough.scenario.grammar.Route;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Problems;
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
                // What an item that is not there would hold comes with the item alone.
                .filter(within -> !within.contains("[+]."))
                .toList();
        return endingIn(path, known)
                .or(() -> Nearest.to(path, known))
                .or(() -> endingIn(path, all))
                .or(() -> Nearest.to(path, all))
                .or(() -> Nearest.to(
                                last(path), known.stream().map(PathGuess::last).toList())
                        .flatMap(name -> endingIn(name, known)));
    }

    /**
     * Whether {@code path} leads nowhere although it may be right: it names an item that is written somewhere in {@code root}, of a
     * list that cannot be read or is not where it should be.
     */
    static boolean isAstray(String path, Raw.Mapping root) {
        if (find(path, root).isPresent() || LineFigure.called(path).isPresent()) {
            return false;
        }
        int end = path.length();
        Optional<Route> within = Optional.empty();
        while (within.isEmpty() && end > 0) {
            end = Math.max(path.lastIndexOf('.', end - 1), path.lastIndexOf('[', end - 1));
            within = find(path.substring(0, Math.max(0, end)), root);
        }
        if (within.isEmpty() || find(within.get().path() + "[+]", root).isEmpty()) {
            return false;
        }
        Part list = within.get().part();
        boolean isRead = list.written()
                .flatMap(raw -> list.shape().read(raw, Context.top(new Problems())))
                .isPresent();
        String name = path.substring(end);
        return !isRead && (name.startsWith("[") || isWritten(name.substring(1), root));
    }

    private static Optional<Route> find(String path, Raw root) {
        return Route.find(ScenarioKeys.SCENARIO, root, path);
    }

    /** Whether the beginning of {@code path} is written as a key or a value in {@code raw}, but for its alternatives. */
    private static boolean isWritten(String path, Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            return mapping.entries().stream()
                    .filter(entry -> !entry.key().equals(ScenarioKeys.ALTERNATIVES.name()))
                    .anyMatch(entry -> isBegin(entry.key(), path) || isWritten(path, entry.value()));
        }
        return raw instanceof Raw.Sequence list
                ? list.items().stream().anyMatch(item -> isWritten(path, item))
                : isBegin(raw.text(), path);
    }

    private static boolean isBegin(String name, String path) {
        return path.equals(name) || path.startsWith(name + ".");
    }

    private static Optional<String> endingIn(String name, List<String> paths) {
        return paths.stream().filter(path -> path.endsWith("." + name)).findFirst();
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}
