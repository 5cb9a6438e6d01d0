package runthrough.simulation;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.check.CheckedLine;
import runthrough.simulation.motion.MotionSetting;
import runthrough.simulation.random.RandomNumbers;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.Detail;

/**
 * Runs replications of a line. Only a line that its checks accept can be run. One object serves any number of threads.
 *
 * <p>What a run gives is in {@link Replication}: its sums in {@link runthrough.simulation.records.Totals}, each coil change in {@link runthrough.simulation.records.ChangeRecord}, on
 * demand every element of work in {@link runthrough.simulation.records.WorkRecord} and every breakpoint of speeds and level in {@link runthrough.simulation.records.Trace}. All in SI
 * units.
 */
public final class LineSimulator {
    private final RunPlan plan;
    private final MotionSetting setting;

    private LineSimulator(Line line, RunPlan plan) {
        this.plan = plan;
        this.setting = MotionSetting.of(line);
    }

    /**
     * A simulator of {@code line} under {@code plan}.
     *
     * @throws IllegalArgumentException when the plan leaves out as many coil changes as it runs, rule CHECK-24
     */
    public LineSimulator(CheckedLine line, RunPlan plan) {
        this(line.line(), checked(plan));
    }

    private static RunPlan checked(RunPlan plan) {
        if (plan.extent() instanceof RunPlan.Extent.Changes run && plan.leaveOut() >= run.changes()) {
            throw new IllegalArgumentException("leave-out = " + plan.leaveOut()
                    + " coil changes; must be less than the coil changes run, " + run.changes());
        }
        return plan;
    }

    /**
     * A simulator of {@code line} under {@code plan}, when its checks accept it.
     *
     * @throws runthrough.plant.check.LineRefusedException with all messages, when something of the line is refused
     * @throws IllegalArgumentException when the plan leaves out as many coil changes as it runs
     */
    public static LineSimulator of(Line line, RunPlan plan) {
        return new LineSimulator(CheckedLine.of(line), plan);
    }

    /** A simulator of a line that the checks may refuse, for tests of what the engine itself makes of it. */
    static LineSimulator unchecked(Line line, RunPlan plan) {
        return new LineSimulator(line, plan);
    }

    /**
     * Runs all replications of the plan, one after another, each when it is asked for.
     *
     * @throws runthrough.simulation.records.SimulationException when a run cannot go on
     */
    public Stream<Replication> run(Detail detail) {
        return IntStream.range(0, plan.replications()).mapToObj(index -> run(index, detail));
    }

    /**
     * Runs replication {@code index}, from 0; the same index always gives the same result. It may lie beyond the plan's
     * replications: a study that runs on until its answer is precise asks for such.
     *
     * @throws IllegalArgumentException when the index is below 0
     * @throws runthrough.simulation.records.SimulationException when the run cannot go on
     * @throws java.util.concurrent.CancellationException when the thread is interrupted, soon after
     */
    public Replication run(int index, Detail detail) {
        return run(index, detail, Optional.empty());
    }

    /**
     * The same, each coil change that counts shown to {@code eye} on the way, whatever {@code detail} says of what is kept.
     *
     * @throws IllegalArgumentException when the index is below 0
     * @throws runthrough.simulation.records.SimulationException when the run cannot go on
     * @throws java.util.concurrent.CancellationException when the thread is interrupted, soon after
     */
    public Replication run(int index, Detail detail, ChangeEye eye) {
        return run(index, detail, Optional.of(eye));
    }

    private Replication run(int index, Detail detail, Optional<ChangeEye> eye) {
        return new LineRun(setting, plan, new RandomNumbers(plan.seed(), index), detail, eye).run(index);
    }

    /**
     * Runs a replication that meets {@code randomNumbers}; the same numbers always give the same result. Only coil changes are
     * kept.
     *
     * @throws runthrough.simulation.records.SimulationException when the run cannot go on
     */
    public Replication run(RandomNumbers randomNumbers) {
        return new LineRun(setting, plan, randomNumbers, Detail.CHANGES, Optional.empty())
                .run(randomNumbers.replication());
    }
}
