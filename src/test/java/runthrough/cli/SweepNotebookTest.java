package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** The notebook {@code src/docs/sweep.ipynb} does what it says: its cells, one after the other, in a Python of this machine. */
class SweepNotebookTest {
    private static final Path NOTEBOOK = Path.of("src/docs/sweep.ipynb");

    @Test
    void thousandCasesFromPython() throws IOException, InterruptedException {
        assumeTrue(isInstalled(), "skipped: there is no python3 on this machine");
        JsonNode cells = new ObjectMapper().readTree(NOTEBOOK.toFile()).path("cells");
        String code = StreamSupport.stream(cells.spliterator(), false)
                .filter(cell -> cell.path("cell_type").asText().equals("code"))
                .map(SweepNotebookTest::source)
                .collect(Collectors.joining("\n"));

        ProcessBuilder python = new ProcessBuilder("python3", "-c", code).redirectErrorStream(true);
        python.environment()
                .put(
                        "RUNTHROUGH",
                        String.join(
                                " ",
                                Path.of(System.getProperty("java.home"), "bin", "java")
                                        .toString(),
                                "-cp",
                                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                                Main.class.getName(),
                                "--quiet"));
        Process process = python.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();
        assertThat(said)
                .containsPattern("1000 cases, of which \\d+ meet the target")
                .contains("{'coil-change.crew': '1', 'entry.top-speed': '80 m/min'} 9")
                .contains(
                        "{'coil-change.crew': '2', 'entry.top-speed': '-1 m/min'} entry.top-speed = -1 m/min; must be")
                .contains("exit code 5")
                .contains("[('1', 0.9");
    }

    private static String source(JsonNode cell) {
        return StreamSupport.stream(cell.path("source").spliterator(), false)
                .map(JsonNode::asText)
                .collect(Collectors.joining());
    }

    private static boolean isInstalled() throws InterruptedException {
        try {
            return new ProcessBuilder("python3", "--version").start().waitFor() == 0;
        } catch (IOException noPython) {
            return false;
        }
    }
}
