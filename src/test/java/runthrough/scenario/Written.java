package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import runthrough.plant.Line;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.source.Problem;

/** Scenarios written for a test, each a small change to one that is good. */
final class Written {

    /** A scenario that is accepted without a warning; each section stands on one line, the first on line 1. */
    private static final List<String> GOOD = List.of(
            "title: A line (invented)",
            "coil: {thickness: 2 mm, width: 240 mm, density: 7850 kg/m3, length: 900 m}",
            "entry: {top-speed: 90 m/min, acceleration: 0.3 m/s2, deceleration: 0.4 m/s2}",
            "accumulator: {capacity: 72 m}",
            "process: {speed: 45 m/min, acceleration: 0.2 m/s2, deceleration: 0.25 m/s2}",
            "coil-change: {join: [{join: 50 s}]}",
            "run: {coil-changes: 100, target: 90 %}");

    private final Path folder;

    Written(Path folder) {
        this.folder = folder;
    }

    /** The good scenario with each of {@code sections} in place of the one that begins with the same key, or added. */
    static String with(String... sections) {
        List<String> lines = new java.util.ArrayList<>(GOOD);
        for (String section : sections) {
            String key = section.substring(0, section.indexOf(':') + 1);
            int index = -1;
            for (int i = 0; i < lines.size(); i++) {
                index = lines.get(i).startsWith(key) ? i : index;
            }
            if (index >= 0) {
                lines.set(index, section);
            } else {
                lines.add(section);
            }
        }
        return String.join("\n", lines) + "\n";
    }

    /** The good scenario without the section {@code key}, whose line stays empty. */
    static String without(String key) {
        return with().replaceAll("(?m)^" + key + ":.*$", "");
    }

    Path file(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    ScenarioReading read(String text) {
        return ScenarioFile.open(file("line.yaml", text)).read();
    }

    /** What {@code text} asks for; it must be accepted. */
    SimulationRequest request(String text) {
        ScenarioReading reading = read(text);
        assertThat(reading).isInstanceOf(ScenarioReading.Accepted.class);
        return ((ScenarioReading.Accepted) reading).request();
    }

    /** The line that the good scenario describes with {@code sections} changed. */
    Line line(String... sections) {
        return request(with(sections)).line();
    }

    /** What is wrong with {@code text}, as the user would see it; it must be refused. */
    List<String> refusal(String text) {
        return refusal(file("line.yaml", text));
    }

    List<String> refusal(Path file) {
        ScenarioReading reading = ScenarioFile.open(file).read();
        assertThat(reading).isInstanceOf(ScenarioReading.Refused.class);
        return shown(((ScenarioReading.Refused) reading).problems());
    }

    /** Warnings about {@code text}, which must be accepted. */
    List<String> warnings(String text) {
        ScenarioReading reading = read(text);
        assertThat(reading).isInstanceOf(ScenarioReading.Accepted.class);
        return shown(((ScenarioReading.Accepted) reading).warnings());
    }

    private List<String> shown(List<Problem> problems) {
        return problems.stream()
                .map(problem -> problem.toString().replace(folder + java.io.File.separator, ""))
                .toList();
    }
}
