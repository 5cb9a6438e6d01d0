package runthrough.study.sizing;

import runthrough.study.StudyException;

/**
 * What is asked of a sizing study.
 *
 * @param target share of coil changes that should run through, in (0, 1)
 * @param halfWidth half-width of the capacity's interval, as a part of the capacity, that is wanted, {@code > 0}
 * @param maxReplications so many replications of each capacity may be run to reach it, {@code >= 1}; the plan's own number is
 *     run in any case
 */
public record SizingOptions(double target, double halfWidth, int maxReplications) {
    /** Half-width asked for unless told otherwise. */
    public static final double USUAL_HALF_WIDTH = 0.01;

    /** So many times the plan's replications are allowed unless told otherwise. */
    private static final int USUAL_EXTENSION = 20;

    public SizingOptions {
        if (!(target > 0 && target < 1)) {
            throw new StudyException("target = " + 100 * target
                    + " %; must be more than 0 % and less than 100 % to size an accumulator. Give a share such as 99.5 %:"
                    + " no run can show that every coil change will run through, and none need when nothing is asked.");
        }
        if (!(halfWidth > 0 && halfWidth < 1)) {
            throw new StudyException("half-width = " + 100 * halfWidth
                    + " % of the capacity; must be more than 0 % and less than 100 %. Give one such as 1 %.");
        }
        if (maxReplications < 1) {
            throw new StudyException("replications = " + maxReplications + " at most; must be 1 or more.");
        }
    }

    /** The usual ones for {@code target} under a plan of {@code replications}. */
    public static SizingOptions usual(double target, int replications) {
        return new SizingOptions(target, USUAL_HALF_WIDTH, Math.multiplyExact(USUAL_EXTENSION, replications));
    }
}
