package runthrough.scenario.grammar;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import runthrough.scenario.source.Interrupted;
import runthrough.scenario.source.Raw;

/**
 * The way from the whole of a description to a part of it.
 *
 * @param path with the usual names
 * @param part at its end; its {@code put} gives the whole description
 */
public record Route(String path, Part part) {

    /** The way that {@code path} names in {@code raw}, which is of the shape {@code root}; the part need not be written. */
    public static Optional<Route> find(Shape<?> root, Raw raw, String path) {
        return whole(root, raw).along(path.strip());
    }

    /** All ways to what is written or has a default, in the order of the grammar, outer parts before those within. */
    public static Stream<Route> all(Shape<?> root, Raw raw) {
        return whole(root, raw).within();
    }

    /** All ways to what may be written besides, given what is written. */
    public static Stream<Route> possible(Shape<?> root, Raw raw) {
        return whole(root, raw).everything();
    }

    private Stream<Route> everything() {
        return steps().flatMap(step -> Stream.concat(Stream.of(step), step.everything()));
    }

    private static Route whole(Shape<?> root, Raw raw) {
        return new Route("", new Part(List.of(""), "", root, Optional.of(raw), UnaryOperator.identity()));
    }

    private Optional<Route> along(String rest) {
        if (rest.isEmpty()) {
            return path.isEmpty() ? Optional.empty() : Optional.of(this);
        }
        String next = rest.startsWith(".") ? rest.substring(1) : rest;
        return steps().flatMap(step -> step.part.nameAtStartOf(next).map(name -> new Step(step, name)).stream())
                .max(Comparator.comparing(step -> step.name.length()))
                .flatMap(step -> step.route.along(next.substring(step.name.length())));
    }

    private record Step(Route route, String name) {}

    private Stream<Route> within() {
        return steps().filter(step -> step.part.written().isPresent()
                        || !step.part.byDefault().isEmpty())
                .flatMap(step -> Stream.concat(Stream.of(step), step.isGroup() ? step.within() : Stream.empty()));
    }

    /** Whether more than a single value is written here. */
    public boolean isGroup() {
        return part.written().filter(raw -> !(raw instanceof Raw.Scalar)).isPresent();
    }

    private Stream<Route> steps() {
        Interrupted.check("a part of a scenario is looked for");
        return part.shape().parts(part.written()).stream()
                .map(inner -> new Route(join(inner.name()), inner.within(part.put())));
    }

    private String join(String name) {
        return path + (path.isEmpty() || name.startsWith("[") ? "" : ".") + name;
    }
}
