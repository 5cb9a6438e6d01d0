package runthrough.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Totals;
import runthrough.study.cause.NamedCauses;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Pool;
import runthrough.study.statistics.Sample;

/** Takes up what replications gave, in order of their index, and keeps of it what verdict and charts need. */
final class Aggregation {
    private final CoilOutcomes coils;
    private final UnseenStops unseen;
    private final ShiftTallies shifts;
    private final List<Totals> totals = new ArrayList<>();
    private final List<Waited> waited = new ArrayList<>();
    private final NamedCauses causes = new NamedCauses();
    private final ChangePools pools;

    private @Nullable Replication first;

    /** Of replications of {@code line} under {@code plan}, none of them yet. */
    Aggregation(Line line, RunPlan plan) {
        this.pools = new ChangePools(room(plan));
        this.coils = new CoilOutcomes(line);
        this.unseen = UnseenStops.of(line);
        this.shifts = new ShiftTallies(line);
    }

    private static int room(RunPlan plan) {
        return (int) Math.min(Pool.MOST_EXACT, (long) ReplicationStatistics.room(plan) * plan.replications());
    }

    /** Takes up the next replication, of which {@code statistics} saw the coil changes. */
    void add(Replication replication, ReplicationStatistics statistics) {
        if (first == null) {
            first = replication;
        }
        totals.add(replication.totals());
        coils.add(statistics.visits());
        for (ReplicationStatistics.Failed failed : statistics.failed()) {
            causes.add(failed.change(), failed.reason());
            coils.addFailed(failed.change(), failed.reason().cause());
        }
        shifts.add(replication.totals().paidSecondsByShift(), statistics.byShift());
        pools.join(statistics.pools());
        waited.add(statistics.waited());
    }

    List<Totals> totals() {
        return totals;
    }

    /** The first replication taken up. */
    Replication first() {
        return Objects.requireNonNull(first, "no replication yet");
    }

    /** How many coil changes of each replication waited. */
    long[] waited(ToLongFunction<Waited> changes) {
        return waited.stream().mapToLong(changes).toArray();
    }

    /** Whether any coil change was completed. */
    boolean hasChanges() {
        return pools.jointCycleTime().count() > 0;
    }

    /** Share of coil changes run through; there must be any. */
    Estimate shareRunThrough() {
        return estimates().shareRunThrough();
    }

    /** What the totals tell. */
    TotalsEstimates estimates() {
        return new TotalsEstimates(totals, unseen);
    }

    CoilOutcomes coils() {
        return coils;
    }

    /** What came of them shift by shift; empty without shifts. */
    List<ShiftOutcome> shifts(RunPlan plan) {
        return shifts.outcomes(plan);
    }

    NamedCauses causes() {
        return causes;
    }

    /** What the coil changes of all replications were. */
    ChangePools pools() {
        return pools;
    }

    /** The coil changes pooled, for charts. */
    StudyResult.Pooled pooled() {
        return new StudyResult.Pooled(
                pools.jointCycleTime().sample(),
                pools.waiting().sample(),
                sample(pools.marginMetres()),
                sample(pools.stripDrawn()),
                sample(pools.refillTime()));
    }

    private static Optional<Sample> sample(Pool pool) {
        return pool.count() == 0 ? Optional.empty() : Optional.of(pool.sample());
    }
}
