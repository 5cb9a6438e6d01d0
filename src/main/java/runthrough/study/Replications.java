package runthrough.study;

import runthrough.plant.RunPlan;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.SimulationException;

/**
 * The replications of a plan, each with the detail asked for. The first may carry a trace; of a long one only the beginning
 * is traced, by a second, shorter run of it, which has the same random numbers.
 */
final class Replications {
    /** A trace is kept of so many coil changes at most: enough for every chart, and a few megabytes. */
    static final int TRACED_CHANGES = 2000;

    /** Whose coil changes were seen before. */
    private static final ChangeEye NOBODY = change -> {};

    private final RunPlan plan;
    private final Runs.Maker maker;
    private final Runs runs;
    private final StudyOptions options;

    Replications(RunPlan plan, Runs.Maker maker, StudyOptions options) {
        this.plan = plan;
        this.maker = maker;
        this.runs = maker.under(plan);
        this.options = options;
    }

    /** Replication {@code index}, from 0, its coil changes shown to {@code eye}. */
    Replication run(int index, ChangeEye eye) {
        try {
            return index == 0 ? first(eye) : runs.run(index, options.detail(), eye);
        } catch (SimulationException e) {
            throw new StudyException(
                    "replication " + (index + 1) + " of " + plan.replications() + ": " + e.getMessage(), e);
        }
    }

    private Replication first(ChangeEye eye) {
        Detail detail =
                options.firstDetail().compareTo(options.detail()) > 0 ? options.firstDetail() : options.detail();
        boolean knownToBeShort =
                plan.extent() instanceof RunPlan.Extent.Changes extent && extent.changes() <= TRACED_CHANGES;
        if (detail != Detail.TRACE || knownToBeShort) {
            return runs.run(0, detail, eye);
        }
        Replication whole = runs.run(0, Detail.ELEMENTS, eye);
        if (whole.changes().size() + plan.leaveOut() <= TRACED_CHANGES) {
            return runs.run(0, Detail.TRACE, NOBODY);
        }
        RunPlan beginning = new RunPlan(
                new RunPlan.Extent.Changes(TRACED_CHANGES), 0, plan.replications(), plan.seed(), plan.target());
        Replication traced = maker.under(beginning).run(0, Detail.TRACE, NOBODY);
        return new Replication(0, whole.totals(), whole.changes(), whole.work(), traced.trace());
    }
}
