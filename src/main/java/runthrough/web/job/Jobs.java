package runthrough.web.job;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import org.jspecify.annotations.Nullable;
import runthrough.study.StudyListener;

/**
 * Computations that take longer than a request. The page asks after a job while it runs; one that nobody has asked after for
 * a few seconds is given up, so that a closed page does not go on computing.
 */
public final class Jobs implements AutoCloseable {
    /** At once, over all pages. */
    private static final int MOST = 8;

    /** So many results are kept. */
    private static final int KEPT = 16;

    private static final int PAUSE_MS = 1000;
    private static final Duration PATIENCE = Duration.ofSeconds(4);
    private static final Duration LONGEST = Duration.ofMinutes(10);

    private final Map<String, Job> jobs = new ConcurrentHashMap<>();
    private final Replies<Object> results = new Replies<>(KEPT);
    private final ExecutorService workers = Executors.newFixedThreadPool(2, Jobs::worker);
    private final Rounds reaping = new Rounds("page-reaper", PAUSE_MS, this::dropForgotten);

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "page-job");
        thread.setDaemon(true);
        return thread;
    }

    /** What a job does; it reports its progress to the listener and gives up when the listener says so. */
    public interface Work {
        Object run(StudyListener listener);
    }

    /** How far a job is: a share from 0 to 1, then its result or why it failed. */
    public record State(
            double done, @Nullable Object result, @Nullable String failed) {}

    /**
     * The same for {@code work} that gives what {@code question} asks for, and nothing else: it is not done again as long as its result
     * is known.
     */
    public String begin(String question, Work work) {
        Optional<Object> known = results.to(question);
        return begin(
                known.isPresent()
                        ? listener -> known.get()
                        : listener -> {
                            Object result = work.run(listener);
                            results.keep(question, result);
                            return result;
                        });
    }

    /** Begins {@code work} and returns the name of the job. */
    public String begin(Work work) {
        if (jobs.size() >= MOST) {
            throw new Refusal(429, "The program is busy with other computations. Try again in a moment.");
        }
        String id = UUID.randomUUID().toString();
        Job job = new Job();
        jobs.put(id, job);
        try {
            workers.execute(() -> job.run(work));
        } catch (RejectedExecutionException e) {
            jobs.remove(id);
            throw new Refusal(503, "The program is ending.");
        }
        return id;
    }

    /** How far job {@code id} is; once it has ended it is forgotten. */
    public State ask(String id) {
        Job job = jobs.get(id);
        if (job == null) {
            throw new Refusal(404, "This computation was given up. Start it again.");
        }
        job.askedAt = System.nanoTime();
        State state = job.state;
        if (state.result != null || state.failed != null) {
            jobs.remove(id);
        }
        return state;
    }

    /** Gives job {@code id} up, if it is there. */
    public void stop(String id) {
        Job job = jobs.remove(id);
        if (job != null) {
            job.cancelled = true;
        }
    }

    private void dropForgotten() {
        long now = System.nanoTime();
        jobs.forEach((id, job) -> {
            boolean isForgotten = now - job.askedAt > PATIENCE.toNanos();
            boolean isTooLong = now - job.begunAt > LONGEST.toNanos();
            if (isForgotten || isTooLong) {
                stop(id);
            }
        });
    }

    /** How many are running or not yet asked after to their end. */
    public int count() {
        return jobs.size();
    }

    @Override
    public void close() {
        jobs.keySet().forEach(this::stop);
        reaping.close();
        workers.shutdownNow();
    }

    private static final class Job implements StudyListener {
        private final long begunAt = System.nanoTime();
        private volatile long askedAt = begunAt;
        private volatile boolean cancelled;
        private volatile State state = new State(0, null, null);

        private void run(Work work) {
            if (cancelled) {
                return;
            }
            try {
                state = new State(1, work.run(this), null);
            } catch (CancellationException e) {
                state = new State(state.done, null, "It was given up.");
            } catch (RuntimeException e) {
                String why = Refusal.isShortMemory(e) ? Refusal.NO_MEMORY : String.valueOf(e.getMessage());
                state = new State(state.done, null, why);
            } catch (OutOfMemoryError e) {
                state = new State(state.done, null, Refusal.NO_MEMORY);
            } catch (Error e) {
                // Whoever asks must learn that it has ended, whatever ended it.
                state = new State(state.done, null, "An internal error ended it: " + e);
            }
        }

        @Override
        public void progress(int done, int total) {
            state = new State(total > 0 ? Math.min(1, (double) done / total) : 0, null, null);
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }
    }
}
