package runthrough.handcalc;

import java.util.Optional;
import runthrough.plant.Line;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;

/**
 * How fast the carriage of a strand accumulator moves: each of its n strands takes up or gives a share of the strip, so that
 * it moves at the difference of the strip speeds over n.
 *
 * @param strands n
 * @param stroke carriage travel (m)
 * @param filling its greatest speed while filling, against that at which it follows the entry at top speed over the slowest
 *     process (m/s); a missing rest means that filling, not the entry, is slower
 * @param emptying its greatest speed while emptying, against that at which it follows the fastest process with the entry
 *     standing (m/s); a missing rest cannot be run
 */
public record CarriageSpeed(int strands, double stroke, Margin filling, Margin emptying) {

    /** That of {@code line}; empty where strip is not stored in strands. */
    public static Optional<CarriageSpeed> of(Line line) {
        if (!(line.accumulator().form() instanceof StorageForm.Strands form)) {
            return Optional.empty();
        }
        double over = line.entry().topSpeed() - line.slowestRatedSpeed();
        return Optional.of(new CarriageSpeed(
                form.strands(),
                form.stroke(),
                new Margin(Kind.SPEED, form.fillingSpeed(), over / form.strands()),
                new Margin(Kind.SPEED, form.emptyingSpeed(), line.fastestRatedSpeed() / form.strands())));
    }
}
