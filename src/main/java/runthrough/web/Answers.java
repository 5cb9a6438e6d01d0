package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import runthrough.plant.SimulationRequest;
import runthrough.report.Provenance;
import runthrough.report.verdict.RunThroughResult;
import runthrough.simulation.Replication;
import runthrough.simulation.records.SimulationException;
import runthrough.study.OrderedRuns;
import runthrough.study.RunThroughStudy;
import runthrough.study.StudyException;
import runthrough.study.StudyListener;
import runthrough.study.StudyOptions;
import runthrough.study.cause.Reason;
import runthrough.study.lever.WorthStudy;
import runthrough.web.job.Refusal;

/** Runs lines for the page: so many at once, each for so long, no more. */
final class Answers {
    private static final int AT_ONCE = 2;
    private static final long PATIENCE_SECONDS = 5;

    /** Coil changes that take long, in all replications together. */
    private static final double MANY_CHANGES = 100_000;

    private static final String TOO_LONG =
            "This line takes longer than the page waits. Ask for fewer coil changes, or run it on the command line.";
    private static final String TOO_LONG_TO_READ =
            "This text takes longer to read than the page waits. Make it shorter, or read it on the command line.";
    private static final long LONGEST_NANOS = TimeUnit.SECONDS.toNanos(8);

    private final Semaphore places = new Semaphore(AT_ONCE, true);

    /** Of the places, one is left to those who ask for little. */
    private final Semaphore forMuch = new Semaphore(AT_ONCE - 1, true);

    private final String program;
    private final int threads;

    Answers(String program, int threads) {
        this.program = program;
        this.threads = threads;
    }

    String program() {
        return program;
    }

    int threads() {
        return threads;
    }

    /** What the study of {@code request} gives. */
    RunThroughResult run(SimulationRequest request, PageScenario draft, StudyOptions options) {
        return run(request, draft, options, StudyListener.NONE);
    }

    RunThroughResult run(SimulationRequest request, PageScenario draft, StudyOptions options, StudyListener listener) {
        StudyListener bounded = bounded(listener);
        Supplier<RunThroughResult> work = () -> RunThroughResult.of(
                new RunThroughStudy(request).run(options.withThreads(threads), bounded),
                draft.warnings(),
                new Provenance(program, Optional.of(draft.fingerprint()), Optional.empty()));
        double changes = PageScenario.changes(request) * request.run().replications();
        return changes > MANY_CHANGES ? holding(forMuch, 2 * PATIENCE_SECONDS, () -> within(work)) : within(work);
    }

    /** {@code listener}, which gives up when it has taken too long. */
    private static StudyListener bounded(StudyListener listener) {
        long end = System.nanoTime() + LONGEST_NANOS;
        return new StudyListener() {
            @Override
            public Runnable seen(Replication replication, List<Optional<Reason>> reasons) {
                return listener.seen(replication, reasons);
            }

            @Override
            public boolean cancelled() {
                return System.nanoTime() > end;
            }
        };
    }

    /** {@code result} with what its causes are worth; empty where that takes too long. */
    Optional<RunThroughResult> withWorth(RunThroughResult result) {
        return within(() -> {
            try {
                return Optional.of(
                        result.with(new WorthStudy(result.study()).run(threads, bounded(StudyListener.NONE))));
            } catch (CancellationException e) {
                return Optional.empty();
            }
        });
    }

    /** Does {@code work} when there is a place for it. */
    <T> T within(Supplier<T> work) {
        return holding(places, PATIENCE_SECONDS, () -> {
            try {
                return work.get();
            } catch (StudyException | SimulationException e) {
                throw new Refusal(422, "The line cannot be run to its end: " + e.getMessage());
            } catch (CancellationException e) {
                throw new Refusal(503, TOO_LONG);
            }
        });
    }

    private static <T> T holding(Semaphore places, long patienceSeconds, Supplier<T> work) {
        try {
            if (!places.tryAcquire(patienceSeconds, TimeUnit.SECONDS)) {
                throw new Refusal(429, "The program is busy with other computations. Try again in a moment.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(503, "The program is ending.");
        }
        try {
            return work.get();
        } finally {
            places.release();
        }
    }

    /** Does {@code work} that looks whether its thread was interrupted, when there is a place for it, for no longer than a study. */
    <T> T withinTime(Supplier<T> work) {
        return within(() -> inTime(work, TOO_LONG));
    }

    /** Does {@code work} for no longer, which reads or changes a scenario or a table, and takes no place. */
    static <T> T readInTime(Supplier<T> work) {
        return inTime(work, TOO_LONG_TO_READ);
    }

    private static <T> T inTime(Supplier<T> work, String tooLong) {
        long end = System.nanoTime() + LONGEST_NANOS;
        List<T> done = new ArrayList<>();
        try {
            new OrderedRuns(1).run(1, number -> work.get(), done::add, () -> System.nanoTime() > end);
        } catch (CancellationException e) {
            throw new Refusal(503, tooLong);
        }
        return done.get(0);
    }
}
