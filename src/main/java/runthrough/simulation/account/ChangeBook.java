package runthrough.simulation.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.WorkDone;

/**
 * The coil changes of a replication: the latest, and those that are kept. A stop may cost a coil change metres after the next
 * has begun, so records are made at the end.
 *
 * <p>Rule REPORT-7.
 */
final class ChangeBook {
    private final List<ChangeUnderWay> kept = new ArrayList<>();
    private ChangeUnderWay latest = new ChangeUnderWay();

    /** The latest coil change begun; before the first one of number 0, of which nothing is kept. */
    ChangeUnderWay latest() {
        return latest;
    }

    /** A coil change begins. */
    void begin(ChangeUnderWay change) {
        latest = change;
    }

    /** Keeps the latest coil change, if that has come as far as T2; with its {@code work} if it failed. */
    void keepLatest(Supplier<Optional<WorkDone>> work) {
        if (latest.isReleased()) {
            if (latest.worst() != Outcome.RAN_THROUGH) {
                latest.done(work.get());
            }
            kept.add(latest);
        }
    }

    /** How many are kept. */
    int size() {
        return kept.size();
    }

    /** How many of those are of this outcome. */
    int counted(Outcome outcome) {
        return (int) kept.stream().filter(change -> change.worst() == outcome).count();
    }

    /** How many of those were refilled before the next. */
    int refilled() {
        return (int) kept.stream().filter(ChangeUnderWay::isRefilled).count();
    }

    /** The records of those, as they stand. */
    List<ChangeRecord> records() {
        return kept.stream().map(ChangeUnderWay::record).toList();
    }
}
