package runthrough.study.cause;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Coil changes that did not run through, by their cause.
 *
 * @param counts of coil changes; a cause that is not there counts as none
 */
public record CauseCounts(Map<Cause, Long> counts) {
    public CauseCounts {
        counts = Map.copyOf(counts);
    }

    /** None. */
    public static CauseCounts none() {
        return new CauseCounts(Map.of());
    }

    /** How many are attributed to {@code cause}. */
    public long count(Cause cause) {
        return counts.getOrDefault(cause, 0L);
    }

    /** How many there are. */
    public long total() {
        return counts.values().stream().mapToLong(Long::longValue).sum();
    }

    /** What most of them are attributed to, in case of a tie the first of {@link Cause}; empty when all ran through. */
    public Optional<Cause> main() {
        return counts.keySet().stream()
                .filter(cause -> count(cause) > 0)
                .max(Comparator.comparingLong(this::count).thenComparing(Comparator.reverseOrder()));
    }

    /** These and {@code others}. */
    public CauseCounts plus(CauseCounts others) {
        Map<Cause, Long> sum = new EnumMap<>(Cause.class);
        sum.putAll(counts);
        others.counts.forEach((cause, count) -> sum.merge(cause, count, Long::sum));
        return new CauseCounts(sum);
    }
}
