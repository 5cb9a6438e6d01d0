package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.cli.terminal.ExitCode;

/** {@code merge}: what several machines have made of one sweep, put together. */
class MergeCommandTest {
    /** Of times that were observed, at two speeds of the process and three capacities. */
    private static final String[] SIX = {
        "sweep", "measured.yaml", "--vary", "process.speed=58m/min,62m/min", "--vary", "usable-capacity=70m..90m:3"
    };

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenarios() {
        session = new Session(folder).write("marginal.yaml", Session.MARGINAL).write("measured.yaml", Session.MEASURED);
    }

    private Session.Done sweep(String[] cases, String... more) {
        return session.run(
                Stream.concat(Arrays.stream(cases), Arrays.stream(more)).toArray(String[]::new));
    }

    private String read(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }

    private String refusal(String... files) {
        Session.Done done = session.run(Stream.concat(Stream.of("merge", "--out", "merged"), Arrays.stream(files))
                .toArray(String[]::new));
        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(folder.resolve("merged")).doesNotExist();
        return done.err().strip();
    }

    @ParameterizedTest
    @ValueSource(strings = {"json", "csv"})
    void shardsPutTogetherAreTheBytesOfOneMachine(String format) throws IOException {
        sweep(Session.NINE, "--format", format, "--out", "whole");
        for (String part : List.of("1", "2", "3", "4")) {
            sweep(Session.NINE, "--format", format, "--shard", part + "/4", "--out", "part-" + part);
        }

        Session.Done done = session.run("merge", "part-3", "part-1", "part-4", "part-2");
        session.run("merge", "part-4", "part-3", "part-2", "part-1", "--out", "merged");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out()).isEqualTo(read("whole"));
        assertThat(read("merged")).isEqualTo(read("whole"));
    }

    @Test
    void whatIsReadIsNotWrittenOver() throws IOException {
        sweep(Session.NINE, "--out", "whole");
        String whole = read("whole");
        Files.createSymbolicLink(folder.resolve("same"), folder.resolve("whole"));

        for (String out : List.of("whole", "./whole", "same")) {
            Session.Done done = session.run("merge", "whole", "--out", out);

            assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(done.err())
                    .isEqualTo(
                            out
                                    + " cannot be written: it is what this command itself reads or writes. Name another file with --out.\n");
        }
        assertThat(read("whole")).isEqualTo(whole);
    }

    @Test
    void whatIsForeignDamagedDoubledOrMissingIsRefused() throws IOException {
        for (String part : List.of("1", "2", "3")) {
            sweep(Session.NINE, "--shard", part + "/3", "--out", "part-" + part);
        }
        sweep(Session.NINE, "--seed", "8", "--shard", "3/3", "--out", "foreign");
        session.write("damaged", read("part-3").replaceFirst("\"stopped\":", "\"stopped\":1"));

        assertThat(refusal("part-1", "part-2", "foreign"))
                .contains("foreign:1 is of another sweep (")
                .contains("Merge files of one sweep");
        assertThat(refusal("part-1", "part-2", "damaged"))
                .contains("damaged:1 is damaged, or no line of a sweep: its check sum does not fit.");
        byte[] bytes = Files.readAllBytes(folder.resolve("part-3"));
        bytes[bytes.length / 2] = (byte) 0xE4;
        Files.write(folder.resolve("bytes"), bytes);
        assertThat(refusal("part-1", "part-2", "bytes")).containsPattern("bytes:\\d is damaged, or no line of a sweep");
        assertThat(refusal("part-1", "part-2", "part-2", "part-3"))
                .contains("part-2:1: case 2 is doubled. Leave out one of the two.");
        assertThat(refusal("part-1", "part-9")).contains("part-9: there is no such file. Check the name.");
        assertThat(refusal("part-1", "part-3"))
                .isEqualTo(
                        "3 of 9 cases are missing: 2, 5, 8. Name the file of their shard, too, or run it to its end.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"json", "csv"})
    void withUncertaintyWhatIsForeignDamagedDoubledOrMissingIsRefused(String format) throws IOException {
        for (String part : List.of("1", "2", "3")) {
            sweep(SIX, "--uncertainty", "50", "--format", format, "--shard", part + "/3", "--out", "part-" + part);
        }
        // The same cases without uncertainty, and with other resamples.
        sweep(SIX, "--format", format, "--shard", "3/3", "--out", "plain");
        sweep(SIX, "--uncertainty", "51", "--format", format, "--shard", "3/3", "--out", "others");
        session.write("damaged", read("part-3").replaceFirst("undecided", "meets"));

        assertThat(refusal("part-1", "part-2", "plain")).contains("plain:1 is of another sweep");
        assertThat(refusal("part-1", "part-2", "others")).contains("is of another sweep (");
        assertThat(refusal("part-1", "part-2", "damaged")).contains("is damaged, or no line of a sweep");
        assertThat(refusal("part-1", "part-2", "part-2", "part-3")).contains("case 2 is doubled");
        assertThat(refusal("part-1", "part-3")).startsWith("2 of 6 cases are missing: 2, 5.");
    }

    @Test
    void whatIsNoFileIsRefused() {
        assertThat(refusal("/dev/zero")).contains("/dev/zero is not an ordinary file.");
    }
}
