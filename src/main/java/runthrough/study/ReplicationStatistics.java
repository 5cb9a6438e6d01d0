package runthrough.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.ChangeFacts;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.study.cause.CauseFinder;
import runthrough.study.cause.Reason;
import runthrough.study.margin.StripMargin;

/**
 * What verdict and charts need of the coil changes of one replication. It sees them as they come, on the thread that runs it, so that
 * several replications are at work at once and no coil change need be kept; putting them together in order ({@link Aggregation}) is
 * little work.
 */
final class ReplicationStatistics implements ChangeEye {
    private final CauseFinder finder;
    private final Optional<StripMargin> storage;
    private final boolean slows;
    private final ChangePools pools;
    private final CoilOutcomes.Visits visits;
    private final List<Failed> failed = new ArrayList<>();
    private final List<ShiftTallies.Seen> byShift;
    private final Waited waited = new Waited();

    /**
     * A coil change that did not run through.
     *
     * @param place among those of the replication that count, from 0
     */
    record Failed(int place, ChangeRecord change, Reason reason) {}

    /** Of a replication of {@code line} that has not begun; {@code pools} are empty. */
    ReplicationStatistics(Line line, CauseFinder finder, ChangePools pools) {
        this.finder = finder;
        this.pools = pools;
        storage = line.practice().isOneStrip() ? Optional.empty() : Optional.of(new StripMargin(line));
        slows = line.process().slowing().isPresent();
        visits = new CoilOutcomes.Visits(line.coils().size());
        byShift = line.change().shifts().stream()
                .flatMap(shifts -> shifts.list().stream())
                .map(shift -> new ShiftTallies.Seen())
                .toList();
    }

    /** How many coil changes a replication of {@code plan} has; 0 where that is not known before it has run. */
    static int room(RunPlan plan) {
        return plan.extent() instanceof RunPlan.Extent.Changes extent ? extent.changes() - plan.leaveOut() : 0;
    }

    @Override
    public void saw(ChangeFacts change) {
        if (change.outcome() != Outcome.RAN_THROUGH) {
            failed.add(new Failed(
                    visits.count(),
                    ChangeRecord.of(change),
                    finder.reasonOf(change).orElseThrow()));
        }
        visits.add(change.tailCoil());
        pools.add(change, storage, slows);
        if (!byShift.isEmpty()) {
            byShift.get(change.shift()).add(change, storage, slows);
        }
        waited.add(change);
    }

    /** The replication is over. */
    void end() {
        pools.endReplication();
        byShift.forEach(ShiftTallies.Seen::end);
    }

    /** Why each coil change of {@code replication}, whose this is, did not run through; empty for those that did. */
    List<Optional<Reason>> reasons(Replication replication) {
        List<Optional<Reason>> reasons = new ArrayList<>(replication.changes().size());
        replication.changes().forEach(change -> reasons.add(Optional.empty()));
        if (!reasons.isEmpty()) {
            failed.forEach(one -> reasons.set(one.place(), Optional.of(one.reason())));
        }
        return reasons;
    }

    CoilOutcomes.Visits visits() {
        return visits;
    }

    List<Failed> failed() {
        return failed;
    }

    ChangePools pools() {
        return pools;
    }

    /** Those that began in each shift; empty without shifts. */
    List<ShiftTallies.Seen> byShift() {
        return byShift;
    }

    Waited waited() {
        return waited;
    }
}
