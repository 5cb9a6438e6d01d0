package runthrough.study.lever;

import java.util.function.DoubleFunction;
import runthrough.plant.Line;
import runthrough.study.search.Crossing.Harder;

/**
 * A lever of a line, and the line with other values of it.
 *
 * <p>Rule LEVER-2.
 *
 * @param lever that is varied
 * @param line as it is
 * @param present value of the lever
 * @param scaledAlike whether several values are behind it, all changed by the same factor
 * @param from lowest value to be tried
 * @param to highest value to be tried
 * @param step of the values that are tried
 * @param reference what a difference is held against where the value itself is smaller
 * @param variant from a value to the line with it
 */
public record Varied(
        Lever lever,
        Line line,
        double present,
        boolean scaledAlike,
        double from,
        double to,
        double step,
        double reference,
        DoubleFunction<Line> variant) {

    /** Whether a larger value asks more of the line. */
    private boolean isHarderWhenLarger() {
        return lever.what().harder() == Harder.LARGER;
    }

    /** The value that asks most of the line. */
    public double hardest() {
        return isHarderWhenLarger() ? to : from;
    }

    /** The value that asks least of the line. */
    public double easiest() {
        return isHarderWhenLarger() ? from : to;
    }
}
