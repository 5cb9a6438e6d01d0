package runthrough.web;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.report.verdict.CauseRows;
import runthrough.report.verdict.RunThroughResult;
import runthrough.study.cause.Cause;

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
    private static final String ENTRY = "entry.top-speed";

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

    /**
     * Path of the number that acts on the largest cause, beside capacity, speed and joint cycle time; where that is another or none,
     * the entry's top speed, and where entry and process are one strip, the crew.
     */
    static String lever(RunThroughResult result) {
        Line line = result.study().request().line();
        if (line.practice().isOneStrip()) {
            return crew(line);
        }
        Optional<Cause> largest = result.study().verdict().namedCauses().stream()
                .findFirst()
                .map(count -> count.reason().cause());
        return largest.map(cause -> switch (cause) {
                    case JOINT_MADE_AGAIN -> rejects(line.change().reject());
                    case WAITING_FOR_PREPARATION -> line.entry().uncoilers() > 1 ? crew(line) : "entry.uncoilers";
                    case WAITING_FOR_PEOPLE -> crew(line);
                    default -> ENTRY;
                })
                .orElse(ENTRY);
    }

    private static String rejects(CoilChange.Reject reject) {
        return reject instanceof CoilChange.Reject.Chance ? "coil-change.reject.chance" : "coil-change.reject.every";
    }

    /** The crew; with shifts, that of the smallest. */
    private static String crew(Line line) {
        return line.change()
                .shifts()
                .flatMap(shifts -> shifts.list().stream().min(Comparator.comparingInt(Shifts.Shift::crew)))
                .map(shift -> "coil-change.shifts." + shift.name() + ".crew")
                .orElse("coil-change.crew");
    }
}
