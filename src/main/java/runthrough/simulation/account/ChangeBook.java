package runthrough.simulation.account;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import runthrough.simulation.records.ChangeEye;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.WorkDone;

/**
 * The coil changes of a replication: the latest, and the records of those that are kept. A stop may cost a coil change metres after
 * the next has begun, so a record is made when nothing can be lost to it any more: mostly at once, and what was noted of it is
 * forgotten.
 *
 * <p>Rule REPORT-7.
 */
final class ChangeBook {
    private final boolean keepsRecords;
    private final Optional<ChangeEye> eye;
    private final List<ChangeRecord> records = new ArrayList<>();
    /** Kept, and may still lose metres. */
    private final List<ChangeUnderWay> open = new ArrayList<>();
    /** Closed: to be used again. */
    private final Deque<ChangeUnderWay> spare = new ArrayDeque<>();

    private ChangeUnderWay latest = new ChangeUnderWay();
    private int ranThrough;
    private int slowed;
    private int stopped;
    private int refilled;
    private int starvedStops;

    /** A book that keeps records or counts only, and shows each record to {@code eye}. */
    ChangeBook(boolean keepsRecords, Optional<ChangeEye> eye) {
        this.keepsRecords = keepsRecords;
        this.eye = eye;
    }

    /** The latest coil change begun; before the first one of number 0, of which nothing is kept. */
    ChangeUnderWay latest() {
        return latest;
    }

    /** The next coil change begins, with {@link #latest} to be filled in; its number. */
    int begin() {
        int number = latest.number() + 1;
        latest = spare.isEmpty() ? new ChangeUnderWay() : spare.pop();
        return number;
    }

    /**
     * Keeps the latest coil change, if that has come as far as T2; with its {@code work} if it failed. {@code mayLose} says whether any
     * may lose metres from here on.
     */
    void keepLatest(Supplier<Optional<WorkDone>> work, boolean mayLose) {
        if (latest.isReleased()) {
            if (makesRecords() && latest.outcome() != Outcome.RAN_THROUGH) {
                latest.done(work.get());
            }
            open.add(latest);
        }
        if (!mayLose) {
            close();
        }
    }

    /** Nothing can be lost any more. */
    void close() {
        for (int i = 0; i < open.size(); i++) {
            ChangeUnderWay change = open.get(i);
            switch (change.outcome()) {
                case RAN_THROUGH -> ranThrough++;
                case SLOWED -> slowed++;
                case STOPPED -> stopped++;
            }
            refilled += change.isRefilled() ? 1 : 0;
            starvedStops += change.starvedStops();
            if (makesRecords()) {
                record(change);
            }
            spare.push(change);
        }
        open.clear();
    }

    private boolean makesRecords() {
        return keepsRecords || eye.isPresent();
    }

    private void record(ChangeUnderWay change) {
        eye.ifPresent(watching -> watching.saw(change));
        if (keepsRecords) {
            records.add(ChangeRecord.of(change));
        }
    }

    /** How many are kept, once closed. */
    int size() {
        return ranThrough + slowed + stopped;
    }

    /** How many of those are of this outcome. */
    int counted(Outcome outcome) {
        return switch (outcome) {
            case RAN_THROUGH -> ranThrough;
            case SLOWED -> slowed;
            case STOPPED -> stopped;
        };
    }

    /** How many of those were refilled before the next. */
    int refilled() {
        return refilled;
    }

    /** How many starved stops belong to those. */
    int starvedStops() {
        return starvedStops;
    }

    /** The records of those; none where they are only counted. */
    List<ChangeRecord> records() {
        return Collections.unmodifiableList(records);
    }
}
