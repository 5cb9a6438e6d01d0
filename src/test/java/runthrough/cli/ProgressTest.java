package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.Progress;
import runthrough.study.StudyListener;

/** The bar of a study of 10 replications, by a clock of our own. */
class ProgressTest {
    private final StringWriter err = new StringWriter();
    private long now;

    private Progress progress(boolean terminal, Map<String, String> variables) {
        PrintWriter writer = new PrintWriter(err, true);
        Environment environment = new Environment(writer, writer, terminal, variables, Path.of(""));
        return new Progress(environment, StudyListener.NONE, () -> now);
    }

    private void replications(Progress progress, long millisecondsEach) {
        for (int done = 0; done <= 10; done++) {
            progress.progress(done, 10);
            now += TimeUnit.MILLISECONDS.toNanos(millisecondsEach);
        }
        progress.close();
    }

    @Test
    void appearsOnceASecondHasGoneBy_andLeavesAnEmptyLine() throws InterruptedException {
        Progress progress = progress(true, Map.of());
        progress.progress(0, 10);
        now += TimeUnit.MILLISECONDS.toNanos(999);
        progress.progress(1, 10);
        assertThat(err.toString()).isEmpty();

        now += TimeUnit.MILLISECONDS.toNanos(1);
        progress.progress(2, 10);
        waitFor(" 2/10");
        progress.close();

        assertThat(err.toString())
                .startsWith("\rSimulating ")
                .contains("gone / left")
                .doesNotContain("\n")
                .endsWith("\r" + " ".repeat(79) + "\r");
    }

    /** The bar is drawn by a thread of its own. */
    private void waitFor(String text) throws InterruptedException {
        for (int i = 0; i < 600 && !err.toString().contains(text); i++) {
            Thread.sleep(50);
        }
        assertThat(err.toString()).contains(text);
    }

    @Test
    void doesNotAppearForAQuickStudy() {
        replications(progress(true, Map.of()), 90);

        assertThat(err.toString()).isEmpty();
    }

    @Test
    void isSilentInAPipe() {
        replications(progress(false, Map.of()), 5000);

        assertThat(err.toString()).isEmpty();
    }

    @Test
    void fitsTheTerminal() {
        replications(progress(true, Map.of("COLUMNS", "50")), 400);

        assertThat(err.toString().split("\r"))
                .allSatisfy(text -> assertThat(text).hasSizeLessThan(50));
    }
}
