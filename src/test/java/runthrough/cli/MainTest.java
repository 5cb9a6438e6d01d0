package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        CommandLine commandLine = Main.commandLine();
        commandLine.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        return commandLine.execute(args);
    }

    @Test
    void versionIsTheOneOfTheBuild() {
        assertThat(run("--version")).isZero();
        assertThat(out.toString().strip()).isEqualTo("Runthrough " + System.getProperty("project.version"));
    }

    @Test
    void helpSaysWhatTheProgramIsForWithoutColoursInAPipe() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains("Usage: runthrough", "run through its coil changes")
                .doesNotContain("\u001B[");
    }

    @Test
    void noArgumentsPrintTheHelp() {
        assertThat(run()).isZero();
        assertThat(out.toString()).startsWith("Usage: runthrough");
    }

    @Test
    void unknownOptionIsBadInput() {
        assertThat(run("--vresion")).isEqualTo(2);
        assertThat(err.toString()).contains("Unknown option: '--vresion'").doesNotContain("\tat ");
        assertThat(out.toString()).isEmpty();
    }
}
