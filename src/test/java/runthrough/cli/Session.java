package runthrough.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import runthrough.cli.terminal.Environment;

/** The program run within the test: in a folder of its own, with its outputs caught. */
public final class Session {
    /**
     * A line for quick tests: instant speed changes, so that a joint of T seconds at 1 m/s takes T metres of the 100 m of
     * accumulator. Joints of 60 s leave 40 m.
     */
    static final String LINE = """
            title: Quick line (invented)
            coil: {thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, length: 1000 m}
            entry: {uncoilers: 2, top-speed: 120 m/min}
            accumulator: {capacity: 100 m}
            process: {speed: 60 m/min}
            coil-change:
              join: [{join strip: 60 s}]
            run: {coil-changes: 21, leave-out: 1, replications: 3, seed: 7, target: 95 %}
            """;

    /** The same with joints of 50 s to 110 s: one in six takes too long. */
    static final String MARGINAL = LINE.replace("60 s}", "{uniform: [50 s, 110 s]}}");

    /** The same with joints of six times that were observed. */
    static final String MEASURED = LINE.replace("60 s}", "{observed: [50 s, 58 s, 61 s, 70 s, 74 s, 96 s]}}");

    /** A sweep of nine cases of {@link #MARGINAL}. */
    static final String[] NINE = {
        "sweep",
        "marginal.yaml",
        "--vary",
        "joint-cycle-time=60s,80s,100s",
        "--vary",
        "entry.top-speed=100m/min..140m/min:3"
    };

    private final Path folder;
    private final Map<String, String> variables = new HashMap<>();
    private boolean terminal;
    private String input = "";

    public Session(Path folder) {
        this.folder = folder;
    }

    Session atTerminal() {
        terminal = true;
        return this;
    }

    Session with(String variable, String value) {
        variables.put(variable, value);
        return this;
    }

    /** What comes by standard input. */
    Session given(String text) {
        input = text;
        return this;
    }

    /** Writes a file, folders and all. */
    public Session write(String name, String text) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Done run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Environment environment = new Environment(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                terminal,
                variables,
                folder);
        int code = new Program(environment).run(args);
        return new Done(code, out.toString(), err.toString());
    }

    /** All files in the folder, by their path within it. */
    List<String> files() {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a run gave. */
    public record Done(int code, String out, String err) {

        List<String> errLines() {
            return err.lines().toList();
        }
    }
}
