package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawsCommandTest {
    private static final String LINE = "scenarios/tube-line.yaml";

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void copyScenario() throws IOException {
        session = new Session(folder);
        session.write(LINE, Files.readString(Path.of(LINE)));
    }

    private List<String> lines(String... options) {
        Session.Done done = session.run(options);
        assertThat(done.code()).as(done.err()).isZero();
        return done.out().lines().toList();
    }

    @Test
    void eachSourceHasItsValuesByWhatTheyAreFor() {
        List<String> lines = lines("draws", LINE, "--draws", "5", "--repeats", "1");

        assertThat(lines.get(0)).isEqualTo("source,index,repeat,uniform,value");
        assertThat(lines.stream().filter(line -> line.startsWith("join/fit up/time,")))
                .hasSize(5 * 2);
        assertThat(lines("draws", LINE, "--draws", "5", "--repeats", "0").stream()
                        .filter(line -> line.startsWith("join/fit up/time,")))
                .hasSize(5);
        assertThat(lines).anyMatch(line -> line.matches("restart,3,0,0\\.[0-9E-]+,[0-9.]+"));
    }

    @Test
    void withoutMoreAsked_goesSomewhatBeyondTheCoilChangesOfTheRun() {
        List<String> lines = lines("draws", LINE, "--coil-changes", "3");

        assertThat(lines.stream().filter(line -> line.startsWith("reject,"))).hasSize(13 * 4);
    }

    @Test
    void numbersAreOfTheReplicationAndTheSeed() {
        assertThat(lines("draws", LINE, "--replication", "2"))
                .isEqualTo(lines("draws", LINE, "--replication", "2"))
                .isNotEqualTo(lines("draws", LINE));
        assertThat(lines("draws", LINE, "--seed", "5")).isNotEqualTo(lines("draws", LINE));
    }

    @Test
    void badScenarioIsRefused() {
        Session.Done done = session.run("draws", "nowhere.yaml");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.out()).isEmpty();
        assertThat(done.err()).contains("nowhere.yaml");
    }
}
