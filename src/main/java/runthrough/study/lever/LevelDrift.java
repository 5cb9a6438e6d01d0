package runthrough.study.lever;

import java.util.List;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Interval;

/**
 * Whether the level falls from coil change to coil change, over the later half of those of each replication.
 *
 * @param growth how much lower the level is at the start of a coil change than at that before (m)
 * @param refilled share of coil changes after which the accumulator was full again
 */
public record LevelDrift(Estimate growth, double refilled) {
    /** When the accumulator is full again more often than this, a falling level is chance. */
    private static final double SELDOM = 0.01;

    /** A drift (m) less than this is rounding. */
    private static final double ROUNDING = 1e-6;

    /** The later half of {@code changes}, of which there must be any. */
    public static List<ChangeRecord> laterHalf(List<ChangeRecord> changes) {
        return changes.subList(changes.size() / 2, changes.size());
    }

    /** That of some replications, each with its later half. */
    public static LevelDrift of(List<List<ChangeRecord>> laterHalves) {
        double changes = laterHalves.stream().mapToInt(List::size).sum();
        long refilled = laterHalves.stream()
                .flatMap(List::stream)
                .filter(change -> !Double.isNaN(change.refillTime()))
                .count();
        return new LevelDrift(
                Estimators.mean(
                        laterHalves.stream().mapToDouble(LevelDrift::growth).toArray()),
                refilled / changes);
    }

    private static double growth(List<ChangeRecord> changes) {
        double fallen =
                changes.get(0).levelAtStart() - changes.get(changes.size() - 1).levelAtStart();
        return fallen / Math.max(1, changes.size() - 1);
    }

    /** Whether the accumulator is full again often enough that a falling level is chance. */
    public boolean isFullAgain() {
        return refilled >= SELDOM;
    }

    /** Whether the level is shown to fall. */
    public boolean isFalling() {
        return growth.interval().map(Interval::low).orElse(growth.mean()) > ROUNDING;
    }
}
