package runthrough.web;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Trace;

/**
 * A joint on its way from the joiner through the process section. Where it is follows from the metres that have passed: in the
 * accumulator lies as much strip behind it as has passed the joiner since it was made, and before it what is left until the
 * metres processed are {@code leaves}; the two together are the level.
 *
 * <p>Rules SPEED-1, PASS-1, BREAK-1.
 *
 * @param number of the coil change that made it, from 1
 * @param made when it was released (s): T2
 * @param entered strip (m) that had passed the joiner by then
 * @param leaves metres processed when it leaves the accumulator
 * @param arrives metres processed when it reaches the process section, its mark
 * @param past metres processed when it has left the process section, or where the length of that is not given has passed
 * @param arrivesAt when it reaches the process section (s); null where the run ends first
 * @param brokeAt when it breaks (s); null where it does not
 */
record JointView(
        int number,
        double made,
        double entered,
        double leaves,
        double arrives,
        double past,
        @Nullable Double arrivesAt,
        @Nullable Double brokeAt) {

    /** The joints of {@code changes}, in the order in which they are made; none where the line is threaded anew. */
    static List<JointView> of(Line line, List<ChangeRecord> changes, Trace trace, PassedStrip strip) {
        if (!line.practice().hasJoiner()) {
            return List.of();
        }
        List<JointView> joints =
                changes.stream().map(change -> of(line, change, strip)).toList();
        List<Trace.Point> points = trace.points();
        for (int i = 1; i < points.size(); i++) {
            if (isBreak(points.get(i)) && !isBreak(points.get(i - 1))) {
                joints = broken(joints, points.get(i).time(), strip);
            }
        }
        return joints;
    }

    private static JointView of(Line line, ChangeRecord change, PassedStrip strip) {
        ProcessSection process = line.process();
        double leaves = strip.processedAt(change.released()) + strip.levelAt(change.released());
        double arrives = leaves + line.practice().pathToProcess(process);
        double passage =
                process.jointPassage().map(ProcessSection.JointPassage::after).orElse(0.0);
        double length =
                process.jointBreak().map(ProcessSection.JointBreak::length).orElse(0.0);
        OptionalDouble arrivesAt = strip.timeOfProcessed(arrives);
        return new JointView(
                change.number(),
                change.released(),
                strip.enteredAt(change.released()),
                leaves,
                arrives,
                arrives + Math.max(passage, length),
                arrivesAt.isPresent() ? arrivesAt.getAsDouble() : null,
                null);
    }

    private static boolean isBreak(Trace.Point point) {
        return point.processState() == Trace.ProcessState.JOINT_BREAK;
    }

    /** The joint that breaks at {@code time} is in the process section; of several there the trace does not say which it is. */
    private static List<JointView> broken(List<JointView> joints, double time, PassedStrip strip) {
        double processed = strip.processedAt(time);
        List<JointView> inProcess = joints.stream()
                .filter(joint -> joint.made <= time && joint.arrives <= processed && processed <= joint.past)
                .toList();
        return joints.stream()
                .map(joint -> inProcess.size() == 1 && inProcess.contains(joint) ? joint.breaking(time) : joint)
                .toList();
    }

    private JointView breaking(double time) {
        return new JointView(number, made, entered, leaves, arrives, past, arrivesAt, time);
    }
}
