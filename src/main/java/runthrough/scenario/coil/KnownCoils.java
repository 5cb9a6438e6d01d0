package runthrough.scenario.coil;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import runthrough.scenario.source.Raw;

/**
 * The coils that were read last, so that a long schedule is not read again for every variant of a scenario that leaves its
 * coils as they are. Several threads may share it.
 */
public final class KnownCoils {

    private final AtomicReference<@Nullable Known> last = new AtomicReference<>();

    private record Known(Raw written, CoilSourceReader.Found found) {}

    /** What was read from {@code written} when it was read last. */
    Optional<CoilSourceReader.Found> of(Raw written) {
        return Optional.ofNullable(last.get())
                .filter(known -> known.written().equals(written))
                .map(Known::found);
    }

    /** Remembers what {@code written} gave, with nothing to report. */
    void remember(Raw written, CoilSourceReader.Found found) {
        last.set(new Known(written, found));
    }
}
