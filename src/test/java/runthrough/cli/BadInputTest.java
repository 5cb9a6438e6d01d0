package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scenarios that cannot be run: all problems, one per line, on standard error; exit code 2; nothing else. */
class BadInputTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenario() {
        session = new Session(folder).write("line.yaml", Session.LINE);
    }

    private Session.Done refused(String... args) {
        Session.Done done = session.run(args);
        assertThat(done.code()).isEqualTo(2);
        assertThat(done.out()).isEmpty();
        assertThat(done.err()).doesNotContain("Exception", "\tat ", "internal error");
        return done;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    capacity: 100 m         | capcity: 100 m          | Did you mean capacity?
                    capacity: 100 m         | capacity: 100 kg        | accumulator.capacity = 100 kg; kg is a unit of mass, not of length
                    capacity: 100 m         | capacity: 100           | accumulator.capacity = 100; the unit is missing
                    capacity: 100 m         | capacity: -3 m          | accumulator.capacity = -3 m; must be
                    capacity: 100 m         | capacity: .nan          | accumulator.capacity = .nan; must be
                    capacity: 100 m         | capacity: .inf          | accumulator.capacity = .inf; must be
                    {speed: 60 m/min}       | {speed: 0 m/min}        | process.speed = 0 m/min; must be
                    length: 1000 m          | length: 1 km, mass: 5 t | coil.mass = 5 t; the size of the coil is already given by length
                    target: 95 %            | target: 120 %           | run.target = 120 %; must be
                    top-speed: 120 m/min    | top-speed: 50 m/min     | entry.top-speed = 50 m/min; must be
                    """)
    void oneWrongValueIsOneLineWithPlaceRuleAndRemedy(String right, String wrong, String message) {
        session.write("bad.yaml", Session.LINE.replace(right, wrong));

        Session.Done done = refused("run", "bad.yaml");

        assertThat(done.errLines())
                .singleElement()
                .asString()
                .startsWith(folder.resolve("bad.yaml") + ":")
                .contains(message)
                .endsWith(done.err().contains("?") ? "?" : ".");
        assertThat(session.files()).containsExactly("bad.yaml", "line.yaml");
    }

    @Test
    void allProblemsComeAtOnce() {
        session.write(
                "bad.yaml",
                Session.LINE
                        .replace("thickness", "thicknes")
                        .replace("60 m/min", "60 kg")
                        .replace("capacity: 100 m", "capacity: -1 m"));

        assertThat(refused("run", "bad.yaml").errLines()).hasSize(3);
    }

    @Test
    void problemsOfAlternativesComeWithThoseOfTheScenario_inTheOrderOfLines() {
        session.write("bad.yaml", Session.LINE.replace("60 m/min", "60 kg") + "\ntoday: rethread\ncolour: blue\n");

        assertThat(refused("run", "bad.yaml").errLines())
                .extracting(line -> line.replaceAll("^\\S+ (\\S+).*", "$1"))
                .containsExactly("process.speed", "today", "colour");
    }

    @Test
    void checkSaysWarningsToo_whenOnlyAnAlternativeIsWrong() {
        session.write("bad.yaml", Session.LINE.replace("120 m/min", "60 m/min") + "\ntoday: rethread\n");

        assertThat(refused("check", "bad.yaml").errLines())
                .hasSize(2)
                .anyMatch(line -> line.contains("today = rethread"))
                .anyMatch(line -> line.startsWith("warning: "));
    }

    @Test
    void missingFileComesWithTheNearestName() {
        assertThat(refused("run", "lien.yaml").err()).contains("there is no such file", "Did you mean line.yaml?");
    }

    @Test
    void directoryInPlaceOfAFile() {
        assertThat(refused("run", ".").err()).contains("is a directory. Give the scenario file itself.");
    }

    @Test
    void emptyFile() {
        session.write("empty.yaml", "");

        assertThat(refused("run", "empty.yaml").errLines()).hasSize(1);
    }

    @Test
    void fileOfAHundredMegabytesIsRefusedUnread() throws IOException {
        try (var file = Files.newByteChannel(
                folder.resolve("huge.yaml"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            file.position(100_000_000).write(ByteBuffer.wrap(new byte[] {'\n'}));
        }

        assertThat(refused("run", "huge.yaml").err()).contains("is larger than a scenario may be");
    }

    @Test
    void wrongEncoding() throws IOException {
        Files.write(folder.resolve("latin.yaml"), new byte[] {'t', 'i', 't', 'l', 'e', ':', ' ', (byte) 0xE9, '\n'});

        assertThat(refused("run", "latin.yaml").err()).contains("latin.yaml:1:8: the text is not UTF-8");
    }

    @Test
    void checkSaysOfAllFiles_andRunsNothing() {
        session.write("bad.yaml", Session.LINE.replace("capacity", "capcity"));

        Session.Done done = session.run("check", "line.yaml", "bad.yaml", "nowhere.yaml");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.out()).isEqualToIgnoringNewLines("line.yaml: can be run");
        assertThat(done.errLines()).hasSize(2);
    }

    @Test
    void checkCountsWarnings() {
        session.write("warned.yaml", Session.LINE.replace("120 m/min", "60 m/min"));

        Session.Done done = session.run("check", "warned.yaml");

        assertThat(done.code()).isZero();
        assertThat(done.out()).isEqualToIgnoringNewLines("warned.yaml: can be run, with 1 warning");
        assertThat(done.errLines()).singleElement().asString().startsWith("warning: ");
    }

    /** A coil that chance makes shorter than its crops shows only while the line runs. */
    @Test
    void aRunThatCannotGoOnSaysWhy() {
        session.write(
                "short.yaml",
                Session.LINE.replace(
                        "length: 1000 m", "length: {uniform: [1 m, 1000 m]}, head-crop: 5 m, tail-crop: 5 m"));

        Session.Done done = session.run("run", "short.yaml", "--coil-changes", "500");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.out()).isEmpty();
        assertThat(done.errLines())
                .last()
                .asString()
                .contains("short.yaml: replication ")
                .contains("coil")
                .doesNotContain("Exception");
    }
}
