package runthrough.report.write;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Work that is done on another thread, beside that of whoever waits for it.
 *
 * @param <T> what it gives
 */
public final class Beside<T> {
    private final CompletableFuture<T> work;

    private Beside(CompletableFuture<T> work) {
        this.work = work;
    }

    /** Begins {@code work}. */
    public static <T> Beside<T> begin(Supplier<T> work) {
        return new Beside<>(CompletableFuture.supplyAsync(work));
    }

    /** What it gives, once it is done; its own failure where it failed, so that short memory is called that. */
    public T result() {
        try {
            return work.join();
        } catch (CompletionException e) {
            throw OwnFailure.of(e);
        }
    }
}
