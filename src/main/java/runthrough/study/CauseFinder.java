package runthrough.study;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.simulation.ChangeRecord;
import runthrough.simulation.Outcome;

/**
 * Lays each coil change that did not run through to its {@link Cause}. The coil changes of one replication must come in
 * order.
 *
 * <p>With the process kept at its rated speed the strip held at the start either lasts through the coil change or it does
 * not, see {@link StripNeeded}. Causes are tried in their order: without the wait for preparation it would have lasted; else
 * from a full accumulator and without the wait it would have; else the capacity is too small. A stop or slowing that an
 * earlier coil change handed on, while the strip now lasts, is laid to what the earlier one was.
 *
 * <p>Rules CAUSE-1, CAUSE-2, CAUSE-3, CAUSE-4, CAUSE-5.
 */
final class CauseFinder {
    /** Metres, relative to the capacity, by which levels that are meant to be equal may differ. */
    private static final double ROUNDING = 1e-9;

    private final Line line;
    private final StripNeeded needed;
    private final StripMargin spare;
    private final double capacity;
    private final double rounding;
    private @Nullable Cause before;

    CauseFinder(Line line) {
        this.line = line;
        this.needed = new StripNeeded(line);
        this.spare = new StripMargin(line);
        this.capacity = line.accumulator().capacity();
        this.rounding = ROUNDING * Math.max(1, capacity);
    }

    /** Forgets the coil changes seen: a new replication begins. */
    void startReplication() {
        before = null;
    }

    /** What {@code change} is laid to; empty when it ran through. */
    Optional<Cause> causeOf(ChangeRecord change) {
        before = change.outcome() == Outcome.RAN_THROUGH ? null : find(change);
        return Optional.ofNullable(before);
    }

    private Cause find(ChangeRecord change) {
        if (line.practice().isOneStrip()) {
            return Cause.PRACTICE;
        }
        double level = change.levelAtStart() - spare.holdLevel(change) + rounding;
        double strip = needed.of(change);
        if (before != null && strip <= level) {
            return before;
        }
        double stripWithoutWait = strip - needed.ratedSpeed(change) * change.waiting();
        if (change.waiting() > 0 && stripWithoutWait <= level) {
            return Cause.PREPARATION;
        }
        double full = capacity - spare.holdLevel(change) + rounding;
        return change.levelAtStart() < capacity - rounding && stripWithoutWait <= full ? Cause.REFILL : Cause.CAPACITY;
    }
}
