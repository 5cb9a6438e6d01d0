package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.OwnProcess;

/** The notebook {@code src/docs/sweep.ipynb} does what it says: its cells, one after the other, in a Python of this machine, and what it says of R in an R. */
class SweepNotebookTest {
    private static final Path NOTEBOOK = Path.of("src/docs/sweep.ipynb");

    @Test
    void thousandCasesFromPython() throws IOException, InterruptedException {
        assumeTrue(isInstalled("python3"), "skipped: there is no python3 on this machine");
        JsonNode cells = new ObjectMapper().readTree(NOTEBOOK.toFile()).path("cells");
        String code = StreamSupport.stream(cells.spliterator(), false)
                .filter(cell -> cell.path("cell_type").asText().equals("code"))
                .map(SweepNotebookTest::source)
                .collect(Collectors.joining("\n"));

        ProcessBuilder python = new ProcessBuilder("python3", "-c", code).redirectErrorStream(true);
        python.environment().put("RUNTHROUGH", program() + " --quiet");

        assertThat(said(python))
                .containsPattern("1000 cases, of which [1-9]\\d+ meet the target")
                .contains("{'coil-change.crew': '1', 'entry.top-speed': '80 m/min'} 9")
                .contains(
                        "{'coil-change.crew': '2', 'entry.top-speed': '-1 m/min'} entry.top-speed = -1 m/min; must be")
                .contains("exit code 5")
                .containsPattern("\\[\\('6', 0\\.\\d+\\), \\('8', 0\\.9\\d+\\), \\('10', 0\\.9");
    }

    /** What the notebook says of R, with a program called runthrough in the path. */
    @Test
    void tableForR(@TempDir Path folder) throws IOException, InterruptedException {
        assumeTrue(isInstalled("Rscript"), "skipped: there is no R on this machine");
        Matcher code = Pattern.compile("```r\\n(.*?)```", Pattern.DOTALL).matcher(words());
        assertThat(code.find()).isTrue();
        Path launcher = Files.writeString(folder.resolve("runthrough"), "#!/bin/sh\nexec " + program() + " \"$@\"\n");
        assertThat(launcher.toFile().setExecutable(true)).isTrue();
        Path scenarios = Files.createDirectory(folder.resolve("scenarios"));
        Files.copy(Path.of("scenarios/tube-line.yaml"), scenarios.resolve("tube-line.yaml"));

        ProcessBuilder r = new ProcessBuilder(
                        "Rscript", "-e", code.group(1) + "cat(nrow(cases), cases[['share_run_through']])")
                .directory(folder.toFile())
                .redirectErrorStream(true);
        r.environment().merge("PATH", folder.toString(), (path, ours) -> ours + ":" + path);

        assertThat(said(r)).containsPattern("3 0\\.\\d+ 0\\.9\\d+ 0\\.9\\d+");
        assertThat(folder.resolve("Rplots.pdf")).isNotEmptyFile();
    }

    private static String program() {
        return String.join(" ", OwnProcess.of(Main.class, List.of()).command());
    }

    private static String said(ProcessBuilder program) throws IOException, InterruptedException {
        Process process = program.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();
        return said;
    }

    private static String words() throws IOException {
        return StreamSupport.stream(
                        new ObjectMapper()
                                .readTree(NOTEBOOK.toFile())
                                .path("cells")
                                .spliterator(),
                        false)
                .map(SweepNotebookTest::source)
                .collect(Collectors.joining("\n"));
    }

    private static String source(JsonNode cell) {
        return StreamSupport.stream(cell.path("source").spliterator(), false)
                .map(JsonNode::asText)
                .collect(Collectors.joining());
    }

    private static boolean isInstalled(String language) throws InterruptedException {
        try {
            return new ProcessBuilder(language, "--version").start().waitFor() == 0;
        } catch (IOException notThere) {
            return false;
        }
    }
}
