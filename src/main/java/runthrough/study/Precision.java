package runthrough.study;

/**
 * How well the share of coil changes run through is to be known. What cannot be asked is refused with a {@link
 * StudyException}, whose message is for the user.
 *
 * @param halfWidth half-width of its interval that is wanted, in (0, 1)
 * @param maxReplications so many replications may be run to reach it, {@code >= 1}
 */
public record Precision(double halfWidth, int maxReplications) {

    public Precision {
        if (!(halfWidth > 0 && halfWidth < 1)) {
            throw new StudyException("precision = " + Share.text(halfWidth)
                    + "; must be more than 0 % and less than 100 %. Give the half-width of the interval of the share, such"
                    + " as 0.1 %.");
        }
        if (maxReplications < 1) {
            throw new StudyException("replications at most = " + maxReplications
                    + "; must be 1 or more. Give so many as you have time for, or leave it out.");
        }
    }
}
