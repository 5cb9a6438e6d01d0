package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What if: a scenario run with other values than its file has. */
class SetValuesTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeLine() {
        session = new Session(folder).write("line.yaml", Session.LINE);
    }

    @Test
    void inputsAreListedWithPathValueAndRange() {
        Session.Done done = session.run("inputs", "line.yaml");

        assertThat(done.code()).isZero();
        assertThat(done.out())
                .containsPattern("(?m)^entry.top-speed +120 m/min +more than 0 m/min$")
                .containsPattern("(?m)^coil-change.join.join strip +60 s +0 s or more$")
                .containsPattern("(?m)^accumulator.reserve +0 m +0 m or more; default, not in the file$")
                .containsPattern("(?m)^joint-cycle-time +60 s +more than 0 s$");
    }

    /** 100 m of strip last 100 s at 1 m/s: 60 s run through, 110 s do not. */
    @Test
    void aValueThatIsSetChangesTheAnswerAndIsSaid() {
        assertThat(session.run("run", "line.yaml", "--no-report").out()).contains("RUNS THROUGH");

        Session.Done done = session.run("run", "line.yaml", "--no-report", "--set", "joint-cycle-time=110s");

        assertThat(done.code()).isZero();
        assertThat(done.out())
                .contains("STOPS")
                .contains("Changed for this run: joint-cycle-time = 110 s instead of 60 s.");
    }

    @Test
    void severalValuesMayBeSetAndStandInEveryForm() throws IOException {
        Session.Done done = session.run(
                "run",
                "line.yaml",
                "--set",
                "process.speed=30m/min",
                "--set",
                "coil.mass=9 t",
                "--out",
                "report",
                "--json");

        assertThat(done.code()).isZero();
        assertThat(done.out())
                .contains("\"process.speed = 30 m/min instead of 60 m/min\"", "\"coil.mass = 9 t\"")
                .contains("\"changes\"");
        assertThat(Files.readString(folder.resolve("report/report.html")).replace('\u00a0', ' '))
                .contains("Changed for this run: process.speed = 30 m/min instead of 60 m/min; coil.mass = 9 t.");
    }

    @Test
    void aValueThatTheFileHasAlreadyIsNoChange() {
        // 60 m/min, 1 m/s; the joint takes 60 s.
        Session.Done done = session.run(
                "run",
                "line.yaml",
                "--no-report",
                "--coil-changes",
                "21",
                "--set",
                "process.speed=1m/s",
                "--set",
                "joint-cycle-time=1 min",
                "--set",
                "accumulator.capacity=100m");
        assertThat(done.code()).isZero();
        assertThat(done.out()).doesNotContain("Changed for this run", "instead of");
    }

    @Test
    void theStudiesTakeValuesToo() {
        Session.Done done = session.run("size", "line.yaml", "--no-report", "--set", "joint-cycle-time=80s");

        assertThat(done.code()).isZero();
        assertThat(done.out())
                .contains("Changed for this run: joint-cycle-time = 80 s instead of 60 s.")
                .contains("80 m");
    }

    @Test
    void allThatIsWrongComesAtOnceAndNothingIsWritten() {
        Session.Done done = session.run(
                "run",
                "line.yaml",
                "--set",
                "entry.topspeed=1m/min",
                "--set",
                "joint-cycle-time",
                "--set",
                "coil.width=3 kg");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.out()).isEmpty();
        assertThat(done.err().lines())
                .containsExactly(
                        "--set joint-cycle-time; must be a path and a value with = between them. Write it like --set"
                                + " entry.top-speed=100m/min.",
                        "--set entry.topspeed = 1m/min; is not a part of this scenario. Did you mean entry.top-speed?",
                        "--set coil.width = 3 kg; kg is a unit of mass, not of length; allowed are um, mm, cm, m, km, in, ft,"
                                + " yd. Write it like 12.5 m or 40 ft.");
        assertThat(folder.resolve("reports")).doesNotExist();
    }

    /** The entry's speed stands in the file; it is wrong only beside the speed that was set. */
    @Test
    void aValueOfTheFileThatAnOptionMakesWrongIsNotCalledAnOption() {
        assertThat(session.run("run", "line.yaml", "--set", "rated-speed=500 m/min")
                        .err())
                .startsWith("with the options given, entry.top-speed = ")
                .contains("; must be more than the process speed, 500 m/min.");
    }
}
