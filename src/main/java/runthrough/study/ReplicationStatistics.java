package runthrough.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Line;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.cause.CauseFinder;
import runthrough.study.cause.Reason;
import runthrough.study.margin.StripMargin;

/**
 * What verdict and charts need of one replication. It is taken from it on the thread that ran it, so that several are at work at
 * once; putting them together in order ({@link Aggregation}) is little work.
 *
 * @param replication that it is of
 * @param reasons why each of its coil changes did not run through; empty for those that did
 * @param pools of its coil changes
 * @param byShift of those that began in each shift; empty without shifts
 * @param waited how many of them waited
 */
record ReplicationStatistics(
        Replication replication,
        List<Optional<Reason>> reasons,
        ChangePools pools,
        List<ChangePools> byShift,
        Waited waited) {

    static ReplicationStatistics of(Line line, CauseFinder finder, Replication replication) {
        Optional<StripMargin> storage =
                line.practice().isOneStrip() ? Optional.empty() : Optional.of(new StripMargin(line));
        int changes = replication.changes().size();
        List<Optional<Reason>> reasons = new ArrayList<>(changes);
        ChangePools pools = new ChangePools(changes);
        boolean slows = line.process().slowing().isPresent();
        List<ChangePools> byShift = line.change().shifts().stream()
                .flatMap(shifts -> shifts.list().stream())
                .map(shift -> new ChangePools(0))
                .toList();
        Waited waited = Waited.NONE;
        for (ChangeRecord change : replication.changes()) {
            reasons.add(finder.reasonOf(change));
            pools.add(change, storage, slows);
            if (!byShift.isEmpty()) {
                byShift.get(change.shift()).add(change, storage, slows);
            }
            waited = waited.with(change);
        }
        pools.endReplication();
        byShift.forEach(ChangePools::endReplication);
        return new ReplicationStatistics(replication, reasons, pools, byShift, waited);
    }
}
