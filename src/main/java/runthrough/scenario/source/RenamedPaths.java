package runthrough.scenario.source;

import java.util.List;
import java.util.Optional;

/**
 * Carries another name of a work element to all places of a scenario that name it by a path, such as origins and alternatives.
 *
 * @param paths that led to the element by its former name
 * @param former name, with which they end
 * @param name that it has now
 */
public record RenamedPaths(List<String> paths, String former, String name) {

    public RenamedPaths {
        paths = List.copyOf(paths);
    }

    /** Those of the element at {@code number}, from 1, of the list at {@code list}. */
    public static RenamedPaths of(String list, int number, String former, String name) {
        return new RenamedPaths(List.of(list + "." + former, list + "[" + number + "]." + former), former, name);
    }

    /** {@code raw} with the paths in its keys and values that led to the element. */
    public Raw in(Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            return new Raw.Mapping(
                    mapping.entries().stream()
                            .map(entry -> new Raw.Entry(renamed(entry.key()), entry.place(), in(entry.value())))
                            .toList(),
                    mapping.place());
        } else if (raw instanceof Raw.Sequence sequence) {
            return new Raw.Sequence(sequence.items().stream().map(this::in).toList(), sequence.place());
        }
        Raw.Scalar scalar = (Raw.Scalar) raw;
        return new Raw.Scalar(renamed(scalar.text()), scalar.place());
    }

    private String renamed(String text) {
        return leading(text)
                .map(path -> path.substring(0, path.length() - former.length()) + name + text.substring(path.length()))
                .orElse(text);
    }

    private Optional<String> leading(String text) {
        return paths.stream()
                .filter(path -> text.equals(path) || text.startsWith(path + "."))
                .findFirst();
    }
}
