package runthrough.study.sensitivity;

import runthrough.plant.Line;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.study.margin.StripMargin;

/** Reads a measure off the coil changes of a line. */
final class MeasureReader {
    private final Line line;
    private final StripMargin spare;

    MeasureReader(Line line) {
        this.line = line;
        this.spare = new StripMargin(line);
    }

    /** {@code measure} at each coil change of {@code replication}, in order. */
    double[] read(ChangeMeasure measure, Replication replication) {
        return replication.changes().stream()
                .mapToDouble(change -> read(measure, change))
                .toArray();
    }

    private double read(ChangeMeasure measure, ChangeRecord change) {
        return switch (measure) {
            case MARGIN -> spare.metres(change);
            case RUN_THROUGH -> change.outcome() == Outcome.RAN_THROUGH ? 1 : 0;
            case JOINT_CYCLE_TIME -> change.jointCycleTime();
            case LOST_TIME -> change.lostMetres() / line.ratedSpeed(line.coils().get(change.tailCoil()));
        };
    }
}
