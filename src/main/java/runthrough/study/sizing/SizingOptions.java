package runthrough.study.sizing;

import runthrough.study.Share;
import runthrough.study.StudyException;

/**
 * What is asked of a sizing study. What cannot be asked is refused with a {@link StudyException}, whose message is for the
 * user.
 *
 * @param target share of coil changes that should run through, in (0, 1)
 * @param halfWidth half-width of the capacity's interval, as a part of the capacity, that is wanted, in (0, 1)
 * @param maxReplications so many replications of each capacity may be run to reach it, {@code >= 1}; the plan's own number is
 *     run in any case
 */
public record SizingOptions(double target, double halfWidth, int maxReplications) {
    /** Half-width asked for unless given otherwise. */
    public static final double USUAL_HALF_WIDTH = 0.01;

    /** So many times the plan's replications are allowed where a precision is asked for. */
    private static final int USUAL_EXTENSION = 10;

    public SizingOptions {
        Share.targetBelowAll(target);
        if (!(halfWidth > 0 && halfWidth < 1)) {
            throw new StudyException("precision = " + Share.text(halfWidth)
                    + "; must be more than 0 % and less than 100 %. Give the half-width of the interval as a part of the"
                    + " capacity, such as 1 %.");
        }
        if (maxReplications < 1) {
            throw new StudyException("replications at most = " + maxReplications
                    + "; must be 1 or more. Give so many as you have time for, or leave it out.");
        }
    }

    /** The replications of the plan and no more, so that every command gives the same capacity. */
    public static SizingOptions usual(double target, int replications) {
        return new SizingOptions(target, USUAL_HALF_WIDTH, replications);
    }

    /** As many more as it takes for {@code halfWidth}, up to ten times those of the plan. */
    public static SizingOptions precise(double target, double halfWidth, int replications) {
        return new SizingOptions(
                target, halfWidth, (int) Math.min(Integer.MAX_VALUE, (long) USUAL_EXTENSION * replications));
    }
}
