package runthrough.study.lever;

import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.simulation.Replication;
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
 * @param growth how much lower the level is at the start of a coil change than at that before (m)
 * @param refilled share of coil changes after which the accumulator was full again
 */
record LongRun(Estimate share, Estimate growth, double refilled) {
    /** Coil changes of a replication, of which the later half is looked at. */
    private static final int CHANGES = 1000;

    /** Enough to tell the share to a few thousandths. */
    private static final int MOST_REPLICATIONS = 50;

    /** When the accumulator is full again more often than this, a falling level is chance. */
    private static final double SELDOM = 0.01;

    /** A drift (m) less than this is rounding. */
    private static final double ROUNDING = 1e-6;

    /** What is seen in one replication. */
    private record Seen(long reached, long changes, long refilled, double growth) {

        static Seen of(Goal goal, Replication replication) {
            List<ChangeRecord> all = replication.changes();
            List<ChangeRecord> later = all.subList(all.size() / 2, all.size());
            double fallen =
                    later.get(0).levelAtStart() - later.get(later.size() - 1).levelAtStart();
            return new Seen(
                    later.stream()
                            .filter(change -> goal.isReachedBy(change.outcome()))
                            .count(),
                    later.size(),
                    later.stream()
                            .filter(change -> !Double.isNaN(change.refillTime()))
                            .count(),
                    fallen / Math.max(1, later.size() - 1));
        }
    }

    /** That of {@code line}, with the seed of {@code plan} and at most as many replications. */
    static LongRun of(Line line, Goal goal, RunPlan plan, Evaluator evaluator) {
        int replications = Math.min(MOST_REPLICATIONS, plan.replications());
        RunPlan longer = new RunPlan(new RunPlan.Extent.Changes(CHANGES), 0, replications, plan.seed(), goal.target());
        List<Seen> seen = evaluator.observe(
                line, longer, IntStream.range(0, replications).toArray(), replication -> Seen.of(goal, replication));
        long[] changes = seen.stream().mapToLong(Seen::changes).toArray();
        return new LongRun(
                Estimators.share(seen.stream().mapToLong(Seen::reached).toArray(), changes),
                Estimators.mean(seen.stream().mapToDouble(Seen::growth).toArray()),
                seen.stream().mapToLong(Seen::refilled).sum()
                        / (double) seen.stream().mapToLong(Seen::changes).sum());
    }

    /** Whether the target of {@code goal} is not shown to be missed, and will not be once the level has fallen further. */
    boolean meets(Goal goal) {
        double falls = growth.interval().map(Interval::low).orElse(growth.mean());
        double most = share.interval().map(Interval::high).orElse(share.mean());
        return most >= goal.target() && (refilled >= SELDOM || falls <= ROUNDING);
    }
}
