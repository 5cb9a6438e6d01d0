package runthrough.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines that come with the program.
 *
 * @param lines in the order in which they are offered
 * @param files which they name: text by name
 */
record ShippedLines(List<Line> lines, Map<String, String> files) {
    /** Names of the files, the scenarios in the order in which they teach. */
    private static final String INDEX = "/runthrough/web/lines.txt";

    private static final String SCENARIOS = "/runthrough/scenarios/";
    private static final String SCENARIO = ".yaml";

    ShippedLines {
        lines = List.copyOf(lines);
        files = Map.copyOf(files);
    }

    /** A line: name of its file without the ending, title, and text. */
    record Line(String name, String title, String text) {}

    static ShippedLines read() {
        List<Line> lines = new ArrayList<>();
        Map<String, String> files = new HashMap<>();
        for (String name : text(INDEX).lines().toList()) {
            String text = text(SCENARIOS + name);
            if (name.endsWith(SCENARIO)) {
                lines.add(line(name.substring(0, name.length() - SCENARIO.length()), text));
            } else {
                files.put(name, text);
            }
        }
        return new ShippedLines(lines, files);
    }

    private static Line line(String name, String text) {
        Optional<String> title = text.lines()
                .filter(line -> line.startsWith("title:"))
                .map(line -> line.substring("title:".length()).strip())
                .findFirst();
        return new Line(name, title.orElse(name), text);
    }

    /** A file of the page itself. */
    static String page(String name) {
        return text("/runthrough/web/" + name);
    }

    private static String text(String name) {
        try (InputStream in = ShippedLines.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing in the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name + " of the program", e);
        }
    }
}
