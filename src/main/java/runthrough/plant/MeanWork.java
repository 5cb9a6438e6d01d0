package runthrough.plant;

import java.util.List;
import java.util.stream.Stream;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.WorkElement.Occurrence;

/** Mean times of the work of a coil change, over many of them. */
public final class MeanWork {

    private MeanWork() {}

    /**
     * Sum of the mean times (s) that {@code elements} add to a coil change.
     *
     * @param width mean of the wider of the two strips (m)
     */
    public static double total(List<WorkElement> elements, double width) {
        return elements.stream().mapToDouble(element -> element.meanTime(width)).sum();
    }

    /** Sum of the mean times (s) that {@code elements} add to a coil change by being done again after rejects. */
    public static double redone(List<WorkElement> elements, Reject reject, double width) {
        return elements.stream()
                .filter(WorkElement::redo)
                .mapToDouble(element -> repeats(element.occurrence(), reject)
                        * element.time().duration(element.time().drawn().mean(), width))
                .sum();
    }

    /** The mean time (s) that the strip stands for work at a joint between strips of which the wider has {@code width} (m). */
    public static double standing(CoilChange change, double width) {
        return scalable(change, width) + redone(change.prepare(), change.reject(), width);
    }

    /** The part of it (s) that is work on tail and joint, the first time and again, and so all but preparing once more. */
    static double scalable(CoilChange change, double width) {
        List<WorkElement> work =
                Stream.concat(change.tail().stream(), change.join().stream()).toList();
        return total(work, width) + redone(work, change.reject(), width);
    }

    /**
     * How often per coil change an element is done again. Rejects and elements that each come by chance are independent. Of
     * a reject on every nth change and an element on every mth, both fall on every change that n and m divide.
     */
    public static double repeats(Occurrence occurrence, Reject reject) {
        if (occurrence instanceof Occurrence.Every element && reject instanceof Reject.Every joint) {
            return 1 / ((double) element.n() / greatestCommonDivisor(element.n(), joint.n()) * joint.n());
        }
        return occurrence.share() * reject.meanExtraPasses();
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
