package runthrough.fuzz;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What comes with the program, as inputs to begin with: without the letter that says what they are. */
final class Shipped {
    private static final ObjectMapper JSON = new ObjectMapper();

    static final Path FOLDER = Path.of("scenarios");

    /** Files that the scenarios name. */
    static final List<String> TABLES = List.of("slitter-coils.csv", "tube-line-times.csv");

    private Shipped() {}

    static Map<Character, List<byte[]>> byKind() {
        return Map.of(
                's', scenarios(),
                'c',
                        List.of(
                                file("slitter-coils.csv"),
                                "length;process speed\n1000 m;60 m/min\n850,5;55\n".getBytes(StandardCharsets.UTF_8)),
                't', List.of(file("tube-line-stopwatch.csv"), file("tube-line-times.csv")),
                'l', List.of(file("tube-line-log.csv")),
                'r', requests());
    }

    private static List<byte[]> scenarios() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .map(Shipped::file)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The beginning of a file without comments, short enough for the fuzzer to come to all of it. */
    private static byte[] file(String name) {
        try (Stream<String> lines = Files.lines(FOLDER.resolve(name))) {
            return (String.join(
                                    "\n",
                                    lines.map(line -> line.replaceFirst("(^| )#.*", ""))
                                            .limit(100)
                                            .toList()) + "\n")
                    .getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A request for each route, whose letter it begins with. */
    private static List<byte[]> requests() {
        ObjectNode body = JSON.createObjectNode()
                .put("text", new String(file("roll-former.yaml"), StandardCharsets.UTF_8))
                .put("units", "us");
        ObjectNode edit = body.deepCopy();
        edit.putArray("changes")
                .add(change("process.speed").put("value", "31 m/min"))
                .add(change("coil-change.join[+]").put("value", "{look: 3 s}"))
                .add(change("coil-change.join[1]").put("name", "fit up"))
                .add(change("coil-change.join[1]").put("time", "triangular").put("value", "[1 s, 2 s, 3 s]"))
                .add(change("coil-change.join[2]"))
                .add(change("joint cycle time").put("value", "40 s"));
        ObjectNode job = JSON.createObjectNode().put("id", "none");
        return List.of(
                request('A', body),
                request('B', edit),
                request('C', body),
                request('D', body),
                request('E', body.deepCopy().put("effort", 1)),
                request('F', job),
                request('G', job),
                request('H', body.deepCopy().put("x", "process.speed").put("y", "accumulator.capacity")),
                request('I', body),
                request('J', body),
                request('K', body),
                request('L', body));
    }

    private static ObjectNode change(String path) {
        return JSON.createObjectNode().put("path", path);
    }

    private static byte[] request(char route, ObjectNode body) {
        return (route + body.toString()).getBytes(StandardCharsets.UTF_8);
    }
}
