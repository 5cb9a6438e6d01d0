package runthrough.study.search;

import java.util.Collections;
import java.util.Optional;
import runthrough.simulation.records.PlainTotals;
import runthrough.simulation.records.Totals;
import runthrough.study.Evaluation;
import runthrough.study.Evaluation.Tally;
import runthrough.study.UnseenStops;

/** Evaluations of a given share, hand-made. */
public final class MadeUp {

    private static final UnseenStops NO_STOPS = new UnseenStops(0, 0, 0, 0);

    private MadeUp() {}

    /** A random line, of whose coil changes in each of some replications so many ran through. */
    public static Evaluation random(int ranThrough, int changes, int replications) {
        return new Evaluation(true, NO_STOPS, Collections.nCopies(replications, tally(ranThrough, changes)));
    }

    /** A line in which nothing is random. */
    public static Evaluation certain(int ranThrough, int changes) {
        return new Evaluation(false, NO_STOPS, Collections.nCopies(1, tally(ranThrough, changes)));
    }

    private static Tally tally(int ranThrough, int changes) {
        int stopped = changes - ranThrough;
        Totals totals = PlainTotals.of(
                3600,
                changes,
                ranThrough,
                0,
                stopped,
                ranThrough,
                stopped,
                0,
                0,
                3600,
                3600,
                3600,
                3600,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0);
        return new Tally(totals, Optional.empty());
    }
}
