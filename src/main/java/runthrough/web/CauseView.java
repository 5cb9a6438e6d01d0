package runthrough.web;

import java.util.List;
import runthrough.report.verdict.CauseRows;
import runthrough.report.verdict.RunThroughResult;

/**
 * A cause of coil changes that did not run through.
 *
 * @param name of it, with the work element that it is named by
 * @param changes of all replications
 * @param stops that belong to them
 * @param lostSeconds of them
 * @param worth fewer stops in a year without it, in words; empty where that was not calculated
 */
record CauseView(String name, long changes, long stops, double lostSeconds, String worth) {

    static List<CauseView> of(RunThroughResult result) {
        return CauseRows.of(result).stream()
                .map(row -> new CauseView(
                        row.name(),
                        row.changes(),
                        row.stops(),
                        row.lostSeconds(),
                        row.worth().orElse("")))
                .toList();
    }
}
