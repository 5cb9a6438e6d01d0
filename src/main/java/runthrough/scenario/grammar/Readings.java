package runthrough.scenario.grammar;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;

/**
 * What parts of a file gave when they were read with nothing to report, so that of a variant of the file only what differs is
 * read again. A part is known by identity: a variant holds the very parts that it leaves as they are.
 */
public final class Readings {
    private final Map<Raw, Reading> earlier;
    private final @Nullable Map<Raw, Reading> now;

    private record Reading(Shape<?> shape, Object value) {}

    private Readings(Map<Raw, Reading> earlier, @Nullable Map<Raw, Reading> now) {
        this.earlier = earlier;
        this.now = now;
    }

    /** Knows nothing and keeps nothing. */
    public static Readings none() {
        return new Readings(Map.of(), null);
    }

    /** Knows nothing yet, and keeps what one thread reads. */
    public static Readings first() {
        return new Readings(Map.of(), new IdentityHashMap<>());
    }

    /** Knows what this has kept, and keeps no more: several threads may ask it at once. */
    public Readings done() {
        return now == null ? this : new Readings(now, null);
    }

    /** What {@code raw} gives to {@code shape}: what it gave before, else what {@code read} gives, whose problems {@code problems} takes. */
    @SuppressWarnings("unchecked")
    <T> Optional<T> of(Raw raw, Shape<T> shape, Supplier<Optional<T>> read, Problems problems) {
        Reading known = earlier.get(raw);
        if (known != null && known.shape() == shape) {
            return Optional.of((T) known.value());
        }
        int before = problems.count();
        Optional<T> value = read.get();
        if (now != null && value.isPresent() && problems.count() == before) {
            now.put(raw, new Reading(shape, value.get()));
        }
        return value;
    }
}
