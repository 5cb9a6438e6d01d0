package runthrough.simulation;

import runthrough.plant.Line;
import runthrough.plant.RunPlan;

/** Runs replications of a line; one object serves any number of threads. */
public final class LineSimulator {
    private final Line line;
    private final RunPlan plan;
    private final boolean coilsDiffer;

    /** A simulator of {@code line} under {@code plan}. */
    public LineSimulator(Line line, RunPlan plan) {
        this.line = line;
        this.plan = plan;
        this.coilsDiffer = JointTracker.coilsDiffer(line);
    }

    /**
     * Runs replication {@code index}, from 0; the same index always gives the same result.
     *
     * @throws SimulationException when the run cannot go on
     */
    public Replication run(int index, Detail detail) {
        return new LineRun(line, plan, coilsDiffer, index, new Streams(plan.seed(), index), detail).run();
    }

    /**
     * Runs a replication that meets {@code random numbers}; the same random numbers always gives the same result. Only coil changes are kept.
     *
     * @throws SimulationException when the run cannot go on
     */
    public Replication run(RandomNumbers randomNumbers) {
        return new LineRun(
                        line,
                        plan,
                        coilsDiffer,
                        randomNumbers.index(),
                        new Streams(plan.seed(), randomNumbers),
                        Detail.CHANGES)
                .run();
    }
}
