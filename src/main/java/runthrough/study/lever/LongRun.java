package runthrough.study.lever;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.Evaluator;
import runthrough.study.Goal;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Interval;

/**
 * What a line does long after the full accumulator that it began with is used up.
 *
 * <p>Rule LEVER-13.
 *
 * @param share of coil changes that do what the goal asks
 * @param drift of the level
 */
record LongRun(Estimate share, LevelDrift drift) {
    /** Coil changes of a replication, of which the later half is looked at. */
    private static final int CHANGES = 1000;

    /** Enough to tell the share to a few thousandths. */
    private static final int MOST_REPLICATIONS = 50;

    /** That of {@code line}, with the seed of {@code plan} and at most as many replications. */
    static LongRun of(Line line, Goal goal, RunPlan plan, Evaluator evaluator) {
        int replications = Math.min(MOST_REPLICATIONS, plan.replications());
        RunPlan longer = new RunPlan(new RunPlan.Extent.Changes(CHANGES), 0, replications, plan.seed(), goal.target());
        List<List<ChangeRecord>> later = evaluator.observe(
                line,
                longer,
                IntStream.range(0, replications).toArray(),
                replication -> LevelDrift.laterHalf(replication.changes()));
        return new LongRun(
                Estimators.share(
                        later.stream()
                                .mapToLong(changes -> reached(goal, changes))
                                .toArray(),
                        later.stream().mapToLong(List::size).toArray()),
                LevelDrift.of(later));
    }

    private static long reached(Goal goal, List<ChangeRecord> changes) {
        return changes.stream()
                .filter(change -> goal.isReachedBy(change.outcome()))
                .count();
    }

    /** Whether the target of {@code goal} is not shown to be missed, and will not be once the level has fallen further. */
    boolean meets(Goal goal) {
        double most = share.interval().map(Interval::high).orElse(share.mean());
        return most >= goal.target() && (drift.isFullAgain() || !drift.isFalling());
    }
}
