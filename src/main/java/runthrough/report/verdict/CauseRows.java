package runthrough.report.verdict;

import java.util.List;
import java.util.Optional;
import runthrough.report.Cell;
import runthrough.study.cause.Cause;

/** The causes of a verdict as rows, for a front door that shows them itself. */
public final class CauseRows {
    private CauseRows() {}

    /**
     * A row.
     *
     * @param name of the cause
     * @param changes that did not run through because of it
     * @param stops that belong to them
     * @param lostSeconds of them
     * @param worth how many fewer stops in a year without it, with its interval, and what else goes with it
     */
    public record Row(String name, long changes, long stops, double lostSeconds, Optional<String> worth) {}

    /** Those of {@code result}, most coil changes first; none for the practice alone. */
    public static List<Row> of(RunThroughResult result) {
        return result.verdict().namedCauses().stream()
                .filter(count -> count.reason().cause() != Cause.PRACTICE)
                .map(count -> new Row(
                        count.reason().words(),
                        count.changes(),
                        count.starvedStops(),
                        count.lostTime(),
                        result.worth(count.reason())
                                .map(worth -> Cell.gain(result.texts().plain(worth.stops()))
                                                .text()
                                        + RemovalWords.more(count.reason())
                                                .map(more -> ", without " + more)
                                                .orElse(""))))
                .toList();
    }
}
