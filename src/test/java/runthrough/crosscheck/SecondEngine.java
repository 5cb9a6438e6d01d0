package runthrough.crosscheck;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The engine in {@code src/test/python}, its example lines and its random lines. */
final class SecondEngine {
    private static final Path PROGRAMS = Path.of("src", "test", "python");
    /** The system's own Python has the system's SimPy, whatever other Python stands first in the path. */
    private static final String PYTHON = "/usr/bin/python3";

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();
    private static final int MINUTES = 10;

    private SecondEngine() {}

    /** Whether this machine has what it needs. */
    static boolean isInstalled() {
        try {
            return start(List.of("-c", "import simpy"), ProcessBuilder.Redirect.PIPE)
                            .waitFor()
                    == 0;
        } catch (IOException noPython) {
            return false;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** One line for each thing that can be described, with what a hand calculation says of it. */
    static List<Case> exampleLines() throws IOException {
        try (Stream<String> lines = Files.lines(PROGRAMS.resolve("examples.jsonl"))) {
            return lines.map(SecondEngine::read).map(Case::new).toList();
        }
    }

    /** Random lines {@code first}, {@code first + 1} and so on, {@code count} of them; each is the same on every machine. */
    static List<Case> randomLines(long first, int count) throws IOException, InterruptedException {
        List<String> arguments =
                List.of("-B", PROGRAMS.resolve("random_lines.py").toString(), "" + first, "" + count);
        return output(arguments, ProcessBuilder.Redirect.PIPE).stream()
                .map(Case::new)
                .toList();
    }

    /** What it makes of each of {@code cases}, in their order; {@code folder} is for its input. */
    static List<JsonNode> run(List<Case> cases, Path folder) throws IOException, InterruptedException {
        Path lines = folder.resolve("lines.jsonl");
        Files.write(lines, cases.stream().map(one -> one.document().toString()).toList());
        List<String> arguments = List.of("-B", PROGRAMS.resolve("line_model.py").toString());
        return output(arguments, ProcessBuilder.Redirect.from(lines.toFile()));
    }

    private static List<JsonNode> output(List<String> arguments, ProcessBuilder.Redirect input)
            throws IOException, InterruptedException {
        Process python = start(arguments, input);
        String said = new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (!python.waitFor(MINUTES, TimeUnit.MINUTES) || python.exitValue() != 0) {
            throw new IllegalStateException("the second engine failed: " + said);
        }
        return said.lines().map(SecondEngine::read).toList();
    }

    private static JsonNode read(String document) {
        try {
            return MAPPER.readTree(document);
        } catch (JsonProcessingException noJson) {
            throw new UncheckedIOException(noJson);
        }
    }

    private static Process start(List<String> arguments, ProcessBuilder.Redirect input) throws IOException {
        return new ProcessBuilder(
                        Stream.concat(Stream.of(PYTHON), arguments.stream()).toList())
                .redirectInput(input)
                .redirectErrorStream(true)
                .start();
    }
}
