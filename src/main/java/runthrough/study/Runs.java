package runthrough.study;

import runthrough.plant.RunPlan;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.Detail;

/** Where replications come from; asked by several threads at once. */
@FunctionalInterface
interface Runs {

    /** Replication {@code index}, from 0, its coil changes shown to {@code eye}; the same index always gives the same result. */
    Replication run(int index, Detail detail, ChangeEye eye);

    /** Makes runs of a line under a plan. */
    @FunctionalInterface
    interface Maker {
        Runs under(RunPlan plan);
    }
}
