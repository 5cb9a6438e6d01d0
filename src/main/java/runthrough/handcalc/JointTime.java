package runthrough.handcalc;

import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.Joints;
import runthrough.plant.MeanWork;

/**
 * How long the strip stands at the joiner, on average over coil changes; each part in seconds, {@code >= 0}.
 *
 * @param tail work on the tail
 * @param join work that needs both coils
 * @param redo work done again after rejects
 * @param waiting for the next coil to be prepared
 */
public record JointTime(double tail, double join, double redo, double waiting) {

    /** The mean work at {@code joints}, without any waiting. */
    public static JointTime of(CoilChange change, Joints joints) {
        return new JointTime(
                MeanWork.total(change.tail(), joints),
                MeanWork.total(change.join(), joints),
                Stream.of(change.prepare(), change.tail(), change.join())
                        .mapToDouble(work -> MeanWork.redone(work, change.reject(), joints))
                        .sum(),
                0);
    }

    /** The one element of a rethread, without any waiting. */
    public static JointTime ofRethread(CoilChange change) {
        return new JointTime(0, change.rethread().mean(), 0, 0);
    }

    /** The same with {@code seconds} of waiting. */
    public JointTime withWaiting(double seconds) {
        return new JointTime(tail, join, redo, seconds);
    }

    /** The work alone (s). */
    public double work() {
        return tail + join + redo;
    }

    /** The joint time T (s): work and waiting. */
    public double total() {
        return work() + waiting;
    }
}
