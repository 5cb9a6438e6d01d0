package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import runthrough.web.job.Jobs;

/** Computations that the page asks after. */
class JobsTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** Whoever asks learns that the job has ended, so that the page does not wait for ever. */
    @Test
    void jobThatRunsOutOfMemoryEnds_andSaysSo() throws InterruptedException {
        assertThat(failureOf(new OutOfMemoryError("heap")))
                .isEqualTo("It needs more memory than there is. Ask for fewer coil changes or replications.");
    }

    @Test
    void jobThatFailsInAnyOtherWayEnds_andSaysSo() throws InterruptedException {
        assertThat(failureOf(new StackOverflowError())).startsWith("An internal error ended it: ");
    }

    private static String failureOf(Error error) throws InterruptedException {
        try (Jobs jobs = new Jobs()) {
            String id = jobs.begin(listener -> {
                throw error;
            });
            Instant end = Instant.now().plus(PATIENCE);
            Jobs.State state = jobs.ask(id);
            while (state.failed() == null && Instant.now().isBefore(end)) {
                Thread.sleep(5);
                state = jobs.ask(id);
            }
            return String.valueOf(state.failed());
        }
    }
}
