package runthrough.study.cause;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import runthrough.simulation.records.ChangeFacts;

/**
 * Takes up the coil changes that did not run through, by cause and named element. Not safe for use by several threads.
 *
 * <p>Rule CAUSE-9.
 */
public final class NamedCauses {
    private final Map<Reason, Count> counts = new LinkedHashMap<>();

    /**
     * Coil changes of one reason.
     *
     * @param reason of them
     * @param changes how many
     * @param starvedStops that belong to them
     * @param lostTime of them (s)
     */
    public record Count(Reason reason, long changes, long starvedStops, double lostTime) {

        private Count plus(Count other) {
            return new Count(
                    reason, changes + other.changes, starvedStops + other.starvedStops, lostTime + other.lostTime);
        }
    }

    /** Takes up {@code change}, whose reason {@code finder} finds, if it did not run through. */
    public void add(CauseFinder finder, ChangeFacts change) {
        finder.reasonOf(change).ifPresent(reason -> add(change, reason));
    }

    /** Takes up {@code change}, which did not run through for {@code reason}. */
    public void add(ChangeFacts change, Reason reason) {
        counts.merge(reason, new Count(reason, 1, change.starvedStops(), change.lostTime()), Count::plus);
    }

    /** Takes up those that were counted elsewhere, such as in another replication. */
    public void add(List<Count> others) {
        others.forEach(other -> counts.merge(other.reason(), other, Count::plus));
    }

    /** The reasons of most coil changes first, of equal ones those that cost most time; then in the order of {@link Cause}. */
    public List<Count> list() {
        return counts.values().stream()
                .sorted(Comparator.comparingLong((Count count) -> -count.changes())
                        .thenComparingDouble(count -> -count.lostTime())
                        .thenComparing(count -> count.reason().cause()))
                .toList();
    }

    /** The same by cause alone. */
    public CauseCounts byCause() {
        Map<Cause, Long> sums = new EnumMap<>(Cause.class);
        counts.values().forEach(count -> sums.merge(count.reason().cause(), count.changes(), Long::sum));
        return new CauseCounts(sums);
    }
}
