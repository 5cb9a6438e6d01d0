package runthrough.simulation.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.WorkDone;

/** The coil changes of a replication: the latest, and the finished ones as records. */
final class ChangeBook {
    private final List<ChangeRecord> records = new ArrayList<>();
    private ChangeUnderWay latest = new ChangeUnderWay();

    /** The latest coil change begun; before the first one of number 0, of which nothing is kept. */
    ChangeUnderWay latest() {
        return latest;
    }

    /** A coil change begins. */
    void begin(ChangeUnderWay change) {
        latest = change;
    }

    /** Keeps the record of the latest coil change, if that has come as far as T2; with its {@code work} if it failed. */
    void keepLatest(Supplier<Optional<WorkDone>> work) {
        if (latest.isReleased()) {
            boolean ranThrough = latest.worst() == Outcome.RAN_THROUGH;
            records.add(latest.record(ranThrough ? Optional.empty() : work.get()));
        }
    }

    /** How many records there are of this outcome. */
    int counted(Outcome outcome) {
        return (int)
                records.stream().filter(change -> change.outcome() == outcome).count();
    }

    /** How many of the recorded coil changes were refilled before the next. */
    int refilled() {
        return (int) records.stream()
                .filter(change -> !Double.isNaN(change.refillTime()))
                .count();
    }

    List<ChangeRecord> records() {
        return records;
    }
}
