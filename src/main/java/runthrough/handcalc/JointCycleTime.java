package runthrough.handcalc;

import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.Joints;
import runthrough.plant.MeanWork;

/**
 * How long the strip stands at the joiner, on average over coil changes; each part in seconds, {@code >= 0}.
 *
 * <p>Rule CHANGE-14.
 *
 * @param tail work on the tail
 * @param join work that needs both coils
 * @param redo work on tail and joint done again after rejects
 * @param waiting for preparation: of the next coil, and of what is prepared again after rejects
 * @param saved by what is taken off every pass of the join work
 */
public record JointCycleTime(double tail, double join, double redo, double waiting, double saved) {

    /** With nothing saved. */
    public JointCycleTime(double tail, double join, double redo, double waiting) {
        this(tail, join, redo, waiting, 0);
    }

    /** The mean work at {@code joints}, with no waiting but for what is prepared again after rejects. */
    public static JointCycleTime of(CoilChange change, Joints joints) {
        return new JointCycleTime(
                MeanWork.total(change.tail(), joints),
                MeanWork.total(change.join(), joints),
                Stream.of(change.tail(), change.join())
                        .mapToDouble(work -> MeanWork.redone(work, change.reject(), joints))
                        .sum(),
                MeanWork.redone(change.prepare(), change.reject(), joints),
                MeanWork.saved(change, joints));
    }

    /** The same with {@code seconds} more of waiting. */
    public JointCycleTime withWaiting(double seconds) {
        return new JointCycleTime(tail, join, redo, waiting + seconds, saved);
    }

    /** The work alone (s). */
    public double work() {
        return Math.max(0, tail + join + redo - saved);
    }

    /** The joint cycle time T (s): work and waiting. */
    public double total() {
        return work() + waiting;
    }
}
