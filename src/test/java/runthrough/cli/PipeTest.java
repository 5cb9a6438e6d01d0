package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.cli.terminal.ExitCode;

/** What makes the program a good part of a pipe: standard input, quiet, arguments from a file. */
class PipeTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenario() {
        session = new Session(folder).write("line.yaml", Session.LINE);
    }

    @Test
    void aScenarioIsReadFromStandardInput() {
        Session.Done file = session.run("run", "line.yaml", "--json", "--no-report");

        assertThat(session.given(Session.LINE).run("run", "-", "--json", "--no-report"))
                .isEqualTo(file);
        assertThat(session.run("check", "-").out()).isEqualToIgnoringNewLines("-: can be run");
        assertThat(session.run("inputs", "-").out()).contains("entry.top-speed");
        assertThat(session.run("size", "-").code()).isZero();
        assertThat(session.files()).contains("reports/standard-input-size/report.html");
    }

    @Test
    void whatIsWrongWithItIsPlacedInStandardInput() {
        Session.Done done =
                session.given(Session.LINE.replace("120 m/min", "fast")).run("run", "-");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.err()).contains("standard input:3:34 entry.top-speed = fast; ");
    }

    /** A table is looked for where the program runs. */
    @Test
    void aTableStandsBesideIt() {
        String scheduled = Session.LINE.replaceFirst("coil: .*", "coils: {schedule: coils.csv}");
        session.write("coils.csv", "thickness [mm],width [mm],density [kg/m3],length [m]\n2,200,7850,1000\n");

        assertThat(session.given(scheduled).run("check", "-").code()).isZero();
    }

    @Test
    void quietLeavesOutWarningsAndProgressButNoErrors() {
        session.write("odd.yaml", Session.MARGINAL).write("bad.yaml", Session.LINE.replace("120 m/min", "fast"));
        assertThat(session.run("run", "odd.yaml", "--no-report").err()).startsWith("warning: ");

        assertThat(session.run("run", "odd.yaml", "--no-report", "--quiet").err())
                .isEmpty();
        assertThat(session.run("check", "bad.yaml", "--quiet").err()).contains("entry.top-speed = fast");
        assertThat(session.run("run", "bad.yaml", "--quiet").err()).contains("entry.top-speed = fast");
    }

    @Test
    void argumentsComeFromAFile() {
        session.write(
                "arguments",
                "# as every night\nrun line.yaml\n--set \"coil-change.join.join strip=70 s\" --no-report\n");
        String named = "@" + folder.resolve("arguments");

        Session.Done done = session.run(named, "--json");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out()).contains("coil-change.join.join strip = 70 s instead of 60 s");
        assertThat(session.run("check", "@nowhere").err()).contains("@nowhere: there is no such file");
        session.write("marked", "\uFEFFcheck line.yaml\n");
        assertThat(session.run("@" + folder.resolve("marked")).code()).isZero();
    }

    @Test
    void argumentsThatCannotBeReadAreRefused() {
        Session.Done done = session.run("run", "@/proc/self/mem");

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err()).startsWith("a file of arguments cannot be read.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/dev/zero", "."})
    void argumentsComeFromNothingElse(String odd) {
        Session.Done done = session.run("run", "@" + odd);

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err()).startsWith("@" + odd + ": is ").contains("Give the argument file itself.");
    }
}
