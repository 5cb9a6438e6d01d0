package runthrough.plant;

import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.WorkElement.Occurrence;

/** Mean times of the work of a coil change, over many of them. */
public final class MeanWork {

    private MeanWork() {}

    /** Sum of the mean times (s) that {@code elements} add to a coil change at {@code joints}. */
    public static double total(List<WorkElement> elements, Joints joints) {
        return elements.stream()
                .mapToDouble(element -> joints.mean(element::meanTime))
                .sum();
    }

    /** Sum of the mean times (s) that {@code elements} add to a coil change by being done again after rejects. */
    public static double redone(List<WorkElement> elements, Reject reject, Joints joints) {
        return elements.stream()
                .filter(WorkElement::redo)
                .mapToDouble(element -> joints.mean(
                        joint -> repeats(element.occurrence(), reject, joint) * element.meanDuration(joint)))
                .sum();
    }

    /** The mean time (s) that the strip stands for work at {@code joints}. */
    public static double standing(CoilChange change, Joints joints) {
        return scalable(change, joints) + redone(change.prepare(), change.reject(), joints);
    }

    /** The part of it (s) that is work on tail and joint, the first time and again, and so all but preparing once more. */
    static double scalable(CoilChange change, Joints joints) {
        List<WorkElement> work =
                Stream.concat(change.tail().stream(), change.join().stream()).toList();
        return Math.max(0, total(work, joints) + redone(work, change.reject(), joints) - saved(change, joints));
    }

    /** What the shortening of every pass of the join work comes to (s), none of which takes less than 0 on average. */
    public static double saved(CoilChange change, Joints joints) {
        return change.joinShorterBy() == 0
                ? 0
                : Math.min(change.joinShorterBy(), total(change.join(), joints))
                        + Math.min(
                                change.joinShorterBy() * change.reject().meanExtraPasses(),
                                redone(change.join(), change.reject(), joints));
    }

    /**
     * How often per coil change with {@code joint} an element is done again. Rejects and elements that each come by chance are independent. Of
     * a reject on every nth change and an element on every mth, both fall on every change that n and m divide.
     */
    public static double repeats(Occurrence occurrence, Reject reject, Joint joint) {
        if (occurrence instanceof Occurrence.Every element && reject instanceof Reject.Every rejected) {
            return 1 / ((double) element.n() / greatestCommonDivisor(element.n(), rejected.n()) * rejected.n());
        }
        return occurrence.share(joint) * reject.meanExtraPasses();
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
