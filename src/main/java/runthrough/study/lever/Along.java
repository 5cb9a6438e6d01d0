package runthrough.study.lever;

import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import runthrough.plant.Line;
import runthrough.study.search.Crossing.Harder;
import runthrough.study.search.Scale;

/** One number along which variants of a line are tried. */
public interface Along {

    /** The line as it is. */
    Line line();

    /** The value of the number now. */
    double present();

    /** Which values are tried, lowest and highest at its ends. */
    Scale scale();

    /** From a value to the line with it. */
    DoubleFunction<Line> variant();

    /** What is tried where the value that asks least is not enough, the nearest to the present one first. */
    default DoubleStream nearPresent() {
        return DoubleStream.of(present());
    }

    /** Whether a larger value asks more of the line. */
    private boolean isHarderWhenLarger() {
        return scale().harder() == Harder.LARGER;
    }

    /** The value that asks most of the line. */
    default double hardest() {
        return isHarderWhenLarger() ? scale().to() : scale().from();
    }

    /** The value that asks least of the line. */
    default double easiest() {
        return isHarderWhenLarger() ? scale().from() : scale().to();
    }
}
