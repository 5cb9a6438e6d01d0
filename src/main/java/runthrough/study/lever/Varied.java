package runthrough.study.lever;

import java.util.function.DoubleFunction;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Line;
import runthrough.study.search.Crossing.Harder;
import runthrough.study.search.Scale;

/**
 * A lever of a line, and the line with other values of it.
 *
 * @param lever that is varied
 * @param line as it is
 * @param present value of the lever
 * @param scaledAlike whether several values are behind it, all changed by the same factor
 * @param scale which values are tried, lowest and highest at its ends
 * @param variant from a value to the line with it
 */
public record Varied(
        Lever lever, Line line, double present, boolean scaledAlike, Scale scale, DoubleFunction<Line> variant) {

    /** Whether a larger value asks more of the line. */
    private boolean isHarderWhenLarger() {
        return scale.harder() == Harder.LARGER;
    }

    /** The value that asks most of the line. */
    public double hardest() {
        return isHarderWhenLarger() ? scale.to() : scale.from();
    }

    /** The value that asks least of the line. */
    public double easiest() {
        return isHarderWhenLarger() ? scale.from() : scale.to();
    }

    /** Whether the line has nothing that could be varied there to its relief. */
    public boolean isNothing() {
        return present == easiest()
                || (lever.what() == Lever.What.REJECTS && line.change().reject() instanceof Reject.Never);
    }
}
