package runthrough.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Line;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.margin.StripMargin;

/**
 * What verdict and charts need of one replication. It is taken from it on the thread that ran it, so that several are at work at
 * once; putting them together in order ({@link Aggregation}) is little work.
 *
 * @param replication that it is of
 * @param causes what each of its coil changes is attributed to; empty for those that ran through
 * @param pools of its coil changes
 * @param waited how many of them waited for preparation
 * @param stops how many starved stops belong to them
 */
record ReplicationStatistics(
        Replication replication, List<Optional<Cause>> causes, ChangePools pools, long waited, long stops) {

    static ReplicationStatistics of(Line line, Replication replication) {
        boolean oneStrip = line.practice().isOneStrip();
        CauseFinder finder = new CauseFinder(line);
        StripMargin spare = new StripMargin(line);
        int changes = replication.changes().size();
        List<Optional<Cause>> causes = new ArrayList<>(changes);
        ChangePools pools = new ChangePools(changes);
        long waited = 0;
        long stops = 0;
        for (ChangeRecord change : replication.changes()) {
            causes.add(finder.causeOf(change));
            pools.addJoint(change);
            if (!oneStrip) {
                pools.addStorage(change, spare);
            }
            waited += change.waiting() > 0 ? 1 : 0;
            stops += change.starvedStops();
        }
        pools.endReplication();
        return new ReplicationStatistics(replication, causes, pools, waited, stops);
    }
}
