package runthrough.report.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import runthrough.OwnProcess;

/** Processes that take turns: a lock holds between processes otherwise than between threads of one. */
class TurnTest {
    private static final int PROCESSES = 3;
    private static final int TURNS = 100;
    private static final int ROUNDS = 120;

    @TempDir
    private Path folder;

    /** Each adds 1 to a number in a file, again and again, and takes its time between reading and writing. */
    @Test
    void noneHasItsTurnDuringAnothers() throws Exception {
        Path number = Files.writeString(folder.resolve("number"), "0");
        inProcesses(Adding.class, process -> List.of(folder.toString(), Integer.toString(process)));

        assertThat(number).hasContent(Integer.toString(PROCESSES * TURNS));
        assertThat(folder.resolve("turn")).doesNotExist();
    }

    /** A run was killed before; those that put their files there now come upon what it left, and one takes its name. */
    @Test
    void aFolderThatWasLeftIsTakenForDeadByNoneThatComesLater() throws Exception {
        for (int round = 0; round < ROUNDS; round++) {
            Path left = Files.createDirectories(folder.resolve(round + "/.out.part1"));
            Files.createDirectory(folder.resolve(round + "/out"));
            Path lock = Files.createFile(left.resolve(".lock-1-a"));
            Files.setLastModifiedTime(lock, FileTime.from(Instant.now().minus(Duration.ofHours(1))));
        }
        long start = System.currentTimeMillis() + 2000;
        inProcesses(Replacing.class, process -> List.of(folder.toString(), Long.toString(start), "of " + process));

        for (int round = 0; round < ROUNDS; round++) {
            Path out = folder.resolve(round + "/out");
            assertThat(Replacing.FILES.stream().map(out::resolve).map(TurnTest::text))
                    .allMatch(text -> text.startsWith("of "))
                    .containsOnly(text(out.resolve("a")));
            assertThat(folder.resolve(Integer.toString(round)).toFile().list()).containsExactly("out");
        }
    }

    /** Nobody lets go of a pipe, or of a folder. */
    @Test
    @Timeout(20)
    void whatNoRunHasLeftIsNotWaitedFor() throws Exception {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();

        for (Path other : List.of(pipe, Files.createDirectory(folder.resolve("other")))) {
            assertThatThrownBy(() -> Turn.of(other, 1)).hasMessageContaining("remove it");
            assertThat(other).exists();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void inProcesses(Class<?> program, IntFunction<List<String>> arguments) throws Exception {
        List<Process> running = new ArrayList<>();
        for (int process = 1; process <= PROCESSES; process++) {
            running.add(
                    OwnProcess.of(program, arguments.apply(process)).inheritIO().start());
        }
        for (Process each : running) {
            assertThat(each.waitFor()).isZero();
        }
    }

    /** One of the processes, which puts files into one folder after the other, each at a given instant. */
    static final class Replacing {
        static final List<String> FILES = List.of("a", "b", "c");
        private static final long PAUSE_MS = 25;

        private Replacing() {}

        public static void main(String[] args) throws IOException {
            for (int round = 0; round < ROUNDS; round++) {
                while (System.currentTimeMillis() < Long.parseLong(args[1]) + round * PAUSE_MS) {
                    Thread.onSpinWait();
                }
                Path out = Path.of(args[0], Integer.toString(round), "out");
                Staging staging = Staging.beside(out);
                for (String file : FILES) {
                    Files.writeString(staging.path().resolve(file), args[2]);
                }
                staging.moveInto(out, FILES);
                staging.drop();
            }
        }
    }

    /** One of the processes. */
    static final class Adding {
        private Adding() {}

        public static void main(String[] args) throws IOException, InterruptedException {
            Path number = Path.of(args[0], "number");
            for (int turn = 0; turn < TURNS; turn++) {
                Turn ours = Turn.of(Path.of(args[0], "turn"), Integer.parseInt(args[1]));
                int before = Integer.parseInt(Files.readString(number));
                Thread.sleep(2);
                Files.writeString(number, Integer.toString(before + 1));
                ours.close();
            }
        }
    }
}
