package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunCommandTest {
    private static final String ESCAPE = "\u001B[";

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenarios() {
        session = new Session(folder).write("line.yaml", Session.LINE).write("marginal.yaml", Session.MARGINAL);
    }

    @Test
    void printsTheVerdictAndTheHandCalculation() {
        Session.Done done = session.run("run", "line.yaml");

        assertThat(done.code()).isZero();
        // 60 s at 1 m/s: 60 m of 100 m, and 40 s to spare.
        assertThat(done.out())
                .contains(
                        "Quick line (invented)",
                        "RUNS THROUGH: the target of 95 % is met",
                        "100 % of coil changes ran through; nothing is left to chance",
                        "60 coil changes in 3 replications: 60 ran through, 0 stopped",
                        "To spare     40 m of strip, 40 s of joint")
                .containsPattern("accumulator capacity +100 m +60 m +40 m");
        assertThat(done.err()).isEmpty();
    }

    @Test
    void optionsOverrideTheScenario() {
        Session.Done done =
                session.run("run", "line.yaml", "--coil-changes", "4", "--replications", "2", "--results-in", "us");

        assertThat(done.out())
                .contains("8 coil changes in 2 replications", "To spare     131.2 ft of strip, 40 s of joint");
    }

    @Test
    void seedDecidesTheLuck() {
        String seven = session.run("run", "marginal.yaml").out();

        assertThat(session.run("run", "marginal.yaml", "--seed", "7").out()).isEqualTo(seven);
        assertThat(session.run("run", "marginal.yaml", "--seed", "8").out()).isNotEqualTo(seven);
    }

    @Test
    void sameBytesForOneThreadAndTwo() {
        assertThat(session.run("run", "marginal.yaml", "--threads", "1").out())
                .isEqualTo(session.run("run", "marginal.yaml", "--threads", "2").out());
    }

    @Test
    void targetMissedIsExitCode3_onlyWhereAskedFor() {
        assertThat(session.run("run", "marginal.yaml").code()).isZero();
        assertThat(session.run("run", "marginal.yaml", "--require-target").code())
                .isEqualTo(3);
        assertThat(session.run("run", "line.yaml", "--require-target").code()).isZero();
    }

    @Test
    void targetNotDecidedIsExitCode3() {
        // 5 coil changes that all run through leave down to 57 % possible (Wilson: 1 / (1 + 1.96^2 / 5)).
        session.write("few.yaml", Session.LINE.replace("60 s}", "{uniform: [50 s, 60 s]}}"));

        Session.Done done =
                session.run("run", "few.yaml", "--coil-changes", "5", "--replications", "1", "--require-target");

        assertThat(done.out()).contains("CANNOT TELL whether the target of 95 % is met; about 73 coil changes would");
        assertThat(done.code()).isEqualTo(3);
    }

    @Test
    void coloursAtATerminalOnly_unlessNoColorIsSet() {
        assertThat(session.run("run", "line.yaml").out()).doesNotContain(ESCAPE);
        assertThat(session.run("run", "line.yaml", "--colour", "always").out()).contains(ESCAPE);
        Session atTerminal = new Session(folder).atTerminal();
        assertThat(atTerminal.run("run", "line.yaml").out()).contains(ESCAPE);
        assertThat(atTerminal.run("run", "line.yaml", "--colour", "never").out())
                .doesNotContain(ESCAPE);
        assertThat(atTerminal.with("NO_COLOR", "1").run("run", "line.yaml").out())
                .doesNotContain(ESCAPE);
    }

    @Test
    void warningsGoToStandardError() {
        session.write("warned.yaml", Session.LINE.replace("120 m/min", "60 m/min"));

        Session.Done done = session.run("run", "warned.yaml");

        assertThat(done.code()).isZero();
        assertThat(done.err()).startsWith("warning: ").contains("entry.top-speed = 60 m/min");
    }

    @Test
    void optionsThatDoNotFitTheScenarioAreBadInput() {
        session.write("left-out.yaml", Session.LINE.replace("seed: 7", "seed: 7, leave-out: 10"));

        Session.Done done = session.run("run", "left-out.yaml", "--coil-changes", "10");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.errLines()).singleElement().asString().contains("with the options given, run.leave-out = 10");
        assertThat(done.out()).isEmpty();
    }
}
