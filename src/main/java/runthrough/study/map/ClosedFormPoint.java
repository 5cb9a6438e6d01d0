package runthrough.study.map;

import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.handcalc.Limit;
import runthrough.handcalc.Margin;
import runthrough.handcalc.Storage;
import runthrough.plant.Line;

/**
 * The margin of each limit by the closed forms, with mean times, as a share of what there is: 0 where it is just
 * enough, negative where it is not, at least {@value #FLOOR}.
 *
 * @param capacity of the accumulator
 * @param refill before the next change
 * @param preparation of the next coil
 */
public record ClosedFormPoint(double capacity, double refill, double preparation) {
    /** Below this nothing is distinguished: all would be needed and there is none. */
    static final double FLOOR = -10;

    /** The closed forms of {@code line} for the coil that is hardest on it; without an accumulator there is never enough. */
    static ClosedFormPoint of(Line line) {
        HandCalculation hand = HandCalculation.of(line);
        Optional<Storage> storage = hand.storage();
        return new ClosedFormPoint(
                storage.map(any -> any.toRunThrough().capacity())
                        .map(ClosedFormPoint::spare)
                        .orElse(FLOOR),
                storage.flatMap(Storage::coilStrip).map(ClosedFormPoint::spare).orElse(FLOOR),
                spare(hand.preparationTime()));
    }

    private static double spare(Margin margin) {
        return Math.max(FLOOR, margin.relative());
    }

    /** The least of the three. */
    public double least() {
        return Math.min(capacity, Math.min(refill, preparation));
    }

    /** Which limit that is; of equals the first. */
    public Limit limitingFactor() {
        double least = least();
        return capacity == least ? Limit.CAPACITY : refill == least ? Limit.REFILL : Limit.PREPARATION;
    }
}
