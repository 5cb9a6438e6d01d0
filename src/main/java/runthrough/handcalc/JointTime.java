package runthrough.handcalc;

import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;

/**
 * How long the strip stands at the joiner, on average over coil changes; each part in seconds, {@code >= 0}.
 *
 * @param tail work on the tail
 * @param join work that needs both coils
 * @param redo work done again after rejects
 * @param waiting for the next coil to be prepared
 */
public record JointTime(double tail, double join, double redo, double waiting) {

    /**
     * The mean work at a joint, without any waiting.
     *
     * @param width mean of the wider of the two strips (m)
     */
    public static JointTime of(CoilChange change, double width) {
        return new JointTime(
                total(change.tail(), width),
                total(change.join(), width),
                Stream.of(change.prepare(), change.tail(), change.join())
                        .flatMap(List::stream)
                        .filter(WorkElement::redo)
                        .mapToDouble(element -> meanRedo(element, change.reject(), width))
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

    /** Sum of the mean times (s) that the elements of a list add to a coil change. */
    static double total(List<WorkElement> elements, double width) {
        return elements.stream().mapToDouble(element -> element.meanTime(width)).sum();
    }

    /** Mean time (s) that an element adds to a coil change by being done again after rejects. */
    static double meanRedo(WorkElement element, Reject reject, double width) {
        return repeats(element.occurrence(), reject)
                * element.time().duration(element.time().drawn().mean(), width);
    }

    /**
     * How often per coil change an element is done again. Rejects and elements that each come by chance are independent. Of
     * a reject on every nth change and an element on every mth, both fall on every change that n and m divide.
     */
    static double repeats(Occurrence occurrence, Reject reject) {
        if (occurrence instanceof Occurrence.Every element && reject instanceof Reject.Every joint) {
            return 1 / ((double) element.n() / greatestCommonDivisor(element.n(), joint.n()) * joint.n());
        }
        return occurrence.share() * reject.meanExtraPasses();
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
