package runthrough.study.lever;

import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Line;
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
        Lever lever, Line line, double present, boolean scaledAlike, Scale scale, DoubleFunction<Line> variant)
        implements Along {

    /** What is tried of the present capacity where a very large one is not enough: the nearest first. */
    private static final double[] NEAR_PRESENT = {Math.sqrt(0.5), Math.sqrt(2), 0.5, 2, 0.25, 4};

    /** More capacity may be worse, as of a crew that must first refill it: then what there is may do, or what is not far from it. */
    @Override
    public DoubleStream nearPresent() {
        double step = scale.step();
        DoubleStream near = lever.what() == Lever.What.CAPACITY
                ? DoubleStream.of(NEAR_PRESENT)
                        .map(factor -> Math.rint(factor * present / step) * step)
                        // Half a strand of one is none.
                        .filter(value -> value > 0)
                : DoubleStream.empty();
        return DoubleStream.concat(DoubleStream.of(present), near);
    }

    /** Whether the line has nothing that could be varied there to its relief. */
    public boolean isNothing() {
        return present == easiest()
                || (lever.what() == Lever.What.REJECTS && line.change().reject() instanceof Reject.Never);
    }
}
