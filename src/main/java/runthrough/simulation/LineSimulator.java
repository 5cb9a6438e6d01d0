package runthrough.simulation;

import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.simulation.motion.MotionSetting;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.random.Streams;
import runthrough.simulation.records.Detail;

/** Runs replications of a line; one object serves any number of threads. */
public final class LineSimulator {
    private final RunPlan plan;
    private final MotionSetting setting;

    /** A simulator of {@code line} under {@code plan}. */
    public LineSimulator(Line line, RunPlan plan) {
        this.plan = plan;
        this.setting = MotionSetting.of(line);
    }

    /**
     * Runs replication {@code index}, from 0; the same index always gives the same result.
     *
     * @throws SimulationException when the run cannot go on
     */
    public Replication run(int index, Detail detail) {
        return new LineRun(setting, plan, new Streams(plan.seed(), index), detail).run(index);
    }

    /**
     * Runs a replication that meets {@code randomNumbers}; the same numbers always give the same result. Only coil changes are kept.
     *
     * @throws SimulationException when the run cannot go on
     */
    public Replication run(RandomNumbers randomNumbers) {
        return new LineRun(setting, plan, new Streams(plan.seed(), randomNumbers), Detail.CHANGES)
                .run(randomNumbers.index());
    }
}
