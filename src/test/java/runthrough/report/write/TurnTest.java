package runthrough.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes that take turns: a lock holds between processes otherwise than between threads of one. */
class TurnTest {
    private static final int PROCESSES = 3;
    private static final int TURNS = 100;

    @TempDir
    private Path folder;

    /** Each adds 1 to a number in a file, again and again, and takes its time between reading and writing. */
    @Test
    void noneHasItsTurnDuringAnothers() throws Exception {
        Path number = Files.writeString(folder.resolve("number"), "0");
        List<Process> adding = new ArrayList<>();
        for (int process = 1; process <= PROCESSES; process++) {
            adding.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                            Adding.class.getName(),
                            folder.toString(),
                            Integer.toString(process))
                    .inheritIO()
                    .start());
        }
        for (Process each : adding) {
            assertThat(each.waitFor()).isZero();
        }

        assertThat(number).hasContent(Integer.toString(PROCESSES * TURNS));
        assertThat(folder.resolve("turn")).doesNotExist();
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
