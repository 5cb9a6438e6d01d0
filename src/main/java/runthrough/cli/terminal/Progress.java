package runthrough.cli.terminal;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import runthrough.simulation.Replication;
import runthrough.study.StudyListener;
import runthrough.study.cause.Reason;

/**
 * A bar with the time left, on standard error. It appears at a terminal only, and only once a second has gone by; when it is
 * closed nothing of it is left.
 */
public final class Progress implements StudyListener, AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private static final Duration BETWEEN = Duration.ofMillis(200);
    private static final int USUAL_WIDTH = 80;
    /** Below this the time left is a guess of no use. */
    private static final double FIRST_SHARE = 1e-4;

    private final StudyListener listener;
    private final PrintWriter err;
    private final int width;
    private final boolean isWanted;
    private final LongSupplier clock;
    private final long start;
    private Duration drawn = Duration.ZERO;

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
        boolean isDue = drawn.isZero()
                ? elapsed.compareTo(PATIENCE) >= 0 && done < total
                : elapsed.minus(drawn).compareTo(BETWEEN) >= 0;
        if (isDue) {
            drawn = elapsed;
            print(bar(done, total, elapsed));
        }
    }

    /** What is done, and the time gone and left. */
    private String bar(int done, int total, Duration elapsed) {
        double share = Math.min(1, (double) done / Math.max(1, total));
        String left = share < FIRST_SHARE ? "?" : clockTime(Math.round(elapsed.toSeconds() * (1 - share) / share));
        String before = String.format(Locale.ROOT, "Simulating %3d%% [", (int) (100 * share));
        String behind =
                String.format("] %d/%d (%s / %s) gone / left", done, total, clockTime(elapsed.toSeconds()), left);
        int room = Math.max(0, width - before.length() - behind.length());
        int filled = (int) (share * room);
        String whole = before + "=".repeat(filled) + " ".repeat(room - filled) + behind;
        return whole.substring(0, Math.min(width, whole.length()));
    }

    private static String clockTime(long seconds) {
        return String.format("%d:%02d:%02d", seconds / 3600, seconds / 60 % 60, seconds % 60);
    }

    private void print(String text) {
        err.print('\r' + text);
        err.flush();
    }

    @Override
    public void close() {
        if (!drawn.isZero()) {
            print(" ".repeat(width) + '\r');
        }
    }
}
