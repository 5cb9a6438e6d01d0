package runthrough.web;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import runthrough.scenario.ScenarioText;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Raw;

/**
 * The files that a scenario names, found before any is read: the page may come from a link of somebody else's, so a scenario on it reads
 * no files of this machine.
 */
record NamedFiles(List<Named> all) {
    /** Keys whose values name files, as they stand in a section or at the end of a path, such as those that alternatives set. */
    private static final Pattern KEYS = Pattern.compile("(.*\\.)?(schedule|sheet)", Pattern.DOTALL);

    /** A file that lies beside the scenario, which is one of the program itself or was sent with it; no disk takes names without end. */
    private static final Pattern OWN = Pattern.compile("(?=.{1,100}$)[A-Za-z0-9_-]+(\\.[A-Za-z0-9_-]+)*");

    /** What names nothing that lies elsewhere: no folder and no drive. A work element may be called like a key, so that its time stands here. */
    private static final Pattern NOT_ELSEWHERE = Pattern.compile("(?!\\.+$)(?=.{1,100}$)(\\d[^/\\\\]*|[^/\\\\:]+)");

    NamedFiles {
        all = List.copyOf(all);
    }

    /** A file as it is named, and the path of the value that names it. */
    private record Named(String path, Raw.Scalar value) {
        String name() {
            return value.text().strip();
        }

        Problem asForeign() {
            return new Problem(
                    value.place().file(),
                    value.place().line(),
                    value.place().column(),
                    path,
                    value.text(),
                    "on the page only files of the lines that come with the program, and those dropped on it, can be used",
                    "Drop the file on the page, or run this scenario on the command line.");
        }
    }

    /** Those of {@code scenario}; none where it cannot be read. */
    static NamedFiles of(ScenarioText scenario) {
        return new NamedFiles(
                scenario.raw().stream().flatMap(raw -> in("", raw)).toList());
    }

    private static Stream<Named> in(String path, Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            return mapping.entries().stream().flatMap(entry -> in(path, entry));
        }
        return raw instanceof Raw.Sequence sequence
                ? sequence.items().stream().flatMap(item -> in(path, item))
                : Stream.empty();
    }

    private static Stream<Named> in(String path, Raw.Entry entry) {
        String inner = path.isEmpty() ? entry.key() : path + "." + entry.key();
        return KEYS.matcher(entry.key().strip()).matches() && entry.value() instanceof Raw.Scalar scalar
                ? Stream.of(new Named(inner, scalar))
                : in(inner, entry.value());
    }

    /** Whether {@code name} is that of a file that can lie beside a scenario. */
    static boolean isOwn(String name) {
        return OWN.matcher(name).matches();
    }

    /** What is wrong with those that lie elsewhere, which the page may not read. */
    List<Problem> foreign() {
        return all.stream()
                .filter(file -> !NOT_ELSEWHERE.matcher(file.name()).matches())
                .map(Named::asForeign)
                .toList();
    }

    /** The names of those that it may read, each once. */
    List<String> own() {
        return all.stream()
                .map(Named::name)
                .filter(NamedFiles::isOwn)
                .distinct()
                .toList();
    }
}
