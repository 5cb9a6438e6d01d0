package runthrough.cli.terminal;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;
import runthrough.simulation.Replication;
import runthrough.study.StudyListener;
import runthrough.study.cause.Reason;

/**
 * A bar with the time left, on standard error. It appears at a terminal only, and only once a second has gone by; when it is
 * closed nothing of it is left.
 */
public final class Progress implements StudyListener, AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final int USUAL_WIDTH = 80;

    private final StudyListener listener;
    private final PrintWriter err;
    private final int width;
    private final boolean isWanted;
    private final LongSupplier clock;
    private final long start;
    private @Nullable ProgressBar bar;
    private boolean isClosed;

    /** The bar for a study that {@code listener} sees go on, too. */
    public Progress(Environment environment, StudyListener listener) {
        this(environment, listener, System::nanoTime);
    }

    /** The same with a clock (ns) of the caller's. */
    public Progress(Environment environment, StudyListener listener, LongSupplier clock) {
        this.clock = clock;
        this.start = clock.getAsLong();
        this.listener = listener;
        err = environment.err();
        isWanted = environment.terminal();
        width = width(environment.variables());
    }

    private static int width(Map<String, String> environment) {
        String columns = environment.getOrDefault("COLUMNS", "");
        return columns.matches("[1-9][0-9]{1,3}") ? Integer.parseInt(columns) - 1 : USUAL_WIDTH - 1;
    }

    @Override
    public Runnable seen(Replication replication, List<Optional<Reason>> reasons) {
        return listener.seen(replication, reasons);
    }

    @Override
    public boolean cancelled() {
        return listener.cancelled();
    }

    @Override
    public void progress(int done, int total) {
        listener.progress(done, total);
        if (!isWanted) {
            return;
        }
        Duration elapsed = Duration.ofNanos(clock.getAsLong() - start);
        if (bar == null && elapsed.compareTo(PATIENCE) >= 0 && done < total) {
            bar = bar(done, total, elapsed);
        }
        if (bar != null) {
            bar.maxHint(total);
            bar.stepTo(done);
        }
    }

    private ProgressBar bar(int done, int total, Duration elapsed) {
        ProgressBar begun = new ProgressBarBuilder()
                .setTaskName("Simulating")
                .setInitialMax(total)
                .startsFrom(done, elapsed)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(200)
                .setConsumer(new DelegatingProgressBarConsumer(this::print, width))
                .clearDisplayOnFinish()
                .build();
        return begun.setExtraMessage("gone / left");
    }

    /** The bar draws itself from a thread of its own, at times once more after it was closed. */
    private synchronized void print(String text) {
        if (!isClosed) {
            err.print('\r' + text);
            err.flush();
        }
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
            wipe();
        }
    }

    private synchronized void wipe() {
        print(" ".repeat(width) + '\r');
        isClosed = true;
    }
}
