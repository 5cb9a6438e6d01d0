package runthrough.study.statistics;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How narrow an interval was asked for, and whether more replications made it so.
 *
 * @param asked half-width asked for, {@code > 0}
 * @param halfWidth the half-width there is; empty where the interval lacks an end, and where nothing is random
 * @param reached whether it is as narrow as asked for
 * @param replications that were run, {@code >= 1}
 * @param limit replications that were allowed
 * @param wouldDo so many replications would about do; empty when it was reached, or when that is not known
 */
public record RelativeHalfWidth(
        double asked, OptionalDouble halfWidth, boolean reached, int replications, int limit, OptionalInt wouldDo) {

    /** What is calculated with beyond the need, for intervals differ from run to run. */
    private static final double MORE = 1.1;

    /** How {@code halfWidth} after so many replications compares: an interval narrows with the square root of their number. */
    public static RelativeHalfWidth of(double asked, OptionalDouble halfWidth, int replications, int limit) {
        boolean reached = halfWidth.isPresent() && halfWidth.getAsDouble() <= asked;
        OptionalInt wouldDo = OptionalInt.empty();
        if (!reached && halfWidth.isPresent()) {
            double ratio = halfWidth.getAsDouble() / asked;
            wouldDo = OptionalInt.of((int) Math.ceil(MORE * replications * ratio * ratio));
        }
        return new RelativeHalfWidth(asked, halfWidth, reached, replications, limit, wouldDo);
    }

    /** Where nothing is random, one replication says all. */
    public static RelativeHalfWidth exact(double asked, int limit) {
        return new RelativeHalfWidth(asked, OptionalDouble.empty(), true, 1, limit, OptionalInt.empty());
    }
}
