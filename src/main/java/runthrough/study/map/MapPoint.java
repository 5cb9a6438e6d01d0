package runthrough.study.map;

import java.util.Optional;
import runthrough.study.cause.CauseCounts;
import runthrough.study.statistics.Estimate;

/**
 * A point of a map that was run.
 *
 * @param column of the point, from 0 at the left
 * @param row of the point, from 0 at the bottom
 * @param measured what it gave; empty where no line can be so
 * @param refusal why not; empty where it can
 */
public record MapPoint(int column, int row, Optional<Measured> measured, String refusal) {

    /**
     * What a line gave.
     *
     * @param changes coil changes of all replications, {@code >= 1}
     * @param share of them that ran through
     * @param causes what those that did not are attributed to
     * @param closedForm what the closed forms say
     */
    public record Measured(long changes, Estimate share, CauseCounts causes, ClosedFormPoint closedForm) {}

    /** Share of coil changes run through; NaN where no line can be so. */
    double share() {
        return measured.map(found -> found.share().mean()).orElse(Double.NaN);
    }

    /** The margin by the closed forms; NaN where no line can be so. */
    double marginByClosedForms() {
        return measured.map(found -> found.closedForm().least()).orElse(Double.NaN);
    }
}
