package runthrough.study;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/**
 * Does numbered pieces of work on several threads and hands over what they give in order of their number, on the caller's
 * thread. Only a few pieces per thread are begun ahead of the one to be handed over next, so that memory is bounded. When
 * pieces fail, the failure of the lowest number is the one reported, whatever the number of threads.
 */
public final class OrderedRuns {
    /** Pieces begun ahead for each thread: enough that no thread waits for a slow neighbour often. */
    private static final int AHEAD = 4;

    private static final long LOOK_MILLIS = 50;

    private final int threads;

    /** For work on so many threads; 0 for the thread that asks for it, one piece after the other. */
    public OrderedRuns(int threads) {
        this.threads = threads;
    }

    /** For work on the thread that asks for it, one piece after the other. */
    static OrderedRuns onCallersThread() {
        return new OrderedRuns(0);
    }

    /**
     * Does pieces 0 to {@code count - 1}.
     *
     * @param work from the number of a piece to its result; called on several threads
     * @param taker gets the results in order, on this thread
     * @param cancelled asked on this thread before and while each result is awaited; an interrupt of it counts as a yes. Work under way
     *     is interrupted then
     */
    public <T> void run(int count, IntFunction<T> work, Consumer<T> taker, BooleanSupplier cancelled) {
        if (threads == 0) {
            for (int number = 0; number < count; number++) {
                checkGoingOn(cancelled, number, count);
                taker.accept(work.apply(number));
            }
            return;
        }
        ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, Math.max(1, count)), OrderedRuns::daemon);
        try {
            Queue<Future<T>> begun = new ArrayDeque<>();
            int next = 0;
            for (int due = 0; due < count; due++) {
                for (; next < count && next < due + AHEAD * threads; next++) {
                    int number = next;
                    begun.add(pool.submit(() -> work.apply(number)));
                }
                int done = due;
                taker.accept(result(begun.remove(), () -> checkGoingOn(cancelled, done, count)));
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static void checkGoingOn(BooleanSupplier cancelled, int done, int count) {
        if (cancelled.getAsBoolean() || Thread.currentThread().isInterrupted()) {
            throw new CancellationException("given up after " + done + " of " + count + " pieces of work");
        }
    }

    /** What {@code future} gives; {@code check} is asked before and while it is awaited. */
    private static <T> T result(Future<T> future, Runnable check) {
        try {
            while (true) {
                check.run();
                try {
                    return future.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
                } catch (TimeoutException e) {
                    // A long replication: whether to go on is asked again.
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("given up while waiting for a replication");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            if (e.getCause() instanceof Error failure) {
                throw failure;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    /** Threads that do not keep the program alive when the study was given up while a long replication runs. */
    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "replication");
        thread.setDaemon(true);
        return thread;
    }
}
