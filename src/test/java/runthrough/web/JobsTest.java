package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import runthrough.web.job.Jobs;
import runthrough.web.job.Replies;

/** Computations that the page asks after. */
class JobsTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** Whoever asks learns that the job has ended, so that the page does not wait for ever. */
    @Test
    void jobThatRunsOutOfMemoryEnds_andSaysSo() throws InterruptedException {
        String words = "It needs more memory than there is. Ask for fewer coil changes or replications.";
        assertThat(failureOf(new OutOfMemoryError("heap"))).isEqualTo(words);
        OutOfMemoryError twice = new OutOfMemoryError("heap");
        assertThat(failureOf(new IllegalArgumentException("Self-suppression not permitted", twice)))
                .isEqualTo(words);
    }

    @Test
    void jobThatFailsInAnyOtherWayEnds_andSaysSo() throws InterruptedException {
        assertThat(failureOf(new StackOverflowError())).startsWith("An internal error ended it: ");
    }

    /** Only what was found is kept: a job that was given up, or failed, is done when it is asked for again. */
    @Test
    void whatIsKnownIsNotWorkedOutAgain() throws InterruptedException {
        AtomicInteger done = new AtomicInteger();
        Jobs.Work fails = listener -> {
            throw new IllegalArgumentException("no. " + done.incrementAndGet());
        };
        Jobs.Work counts = listener -> "answer " + done.incrementAndGet();
        try (Jobs jobs = new Jobs()) {
            assertThat(end(jobs, jobs.begin("how much?", fails)).failed()).isEqualTo("no. 1");
            assertThat(end(jobs, jobs.begin("how much?", counts)).result()).isEqualTo("answer 2");
            assertThat(end(jobs, jobs.begin("how much?", counts)).result()).isEqualTo("answer 2");
            assertThat(end(jobs, jobs.begin("how long?", counts)).result()).isEqualTo("answer 3");
        }
    }

    @Test
    void whatWasNotAskedForLongestGoesFirst() {
        Replies<String> replies = new Replies<>(2);
        String first = Replies.question("answer", new byte[] {1});
        String second = Replies.question("answer", new byte[] {2});
        String ofAnotherKind = Replies.question("course", new byte[] {1});
        replies.keep(first, "1");
        replies.keep(second, "2");
        assertThat(replies.to(first)).contains("1");

        replies.keep(ofAnotherKind, "3");

        assertThat(replies.to(first)).contains("1");
        assertThat(replies.to(second)).isEmpty();
        assertThat(replies.to(ofAnotherKind)).contains("3");
    }

    private static String failureOf(Throwable failure) throws InterruptedException {
        try (Jobs jobs = new Jobs()) {
            String id = jobs.begin(listener -> {
                if (failure instanceof Error error) {
                    throw error;
                }
                throw (RuntimeException) failure;
            });
            return String.valueOf(end(jobs, id).failed());
        }
    }

    private static Jobs.State end(Jobs jobs, String id) throws InterruptedException {
        Instant end = Instant.now().plus(PATIENCE);
        Jobs.State state = jobs.ask(id);
        while (state.failed() == null && state.result() == null && Instant.now().isBefore(end)) {
            Thread.sleep(5);
            state = jobs.ask(id);
        }
        return state;
    }
}
