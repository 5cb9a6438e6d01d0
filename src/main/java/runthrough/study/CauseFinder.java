package runthrough.study;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Line;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.study.margin.StripMargin;

/**
 * Lays each coil change that did not run through to its {@link Cause}. The coil changes of one replication must come in
 * order.
 *
 * <p>With the process kept at its rated speed the strip held at the start either lasts through the coil change or it does
 * not, see {@link StripMargin}. Causes are tried in their order: without the wait for preparation it would have lasted; else
 * from a full accumulator and without the wait it would have; else the capacity is too small. A stop or slowing that an
 * earlier coil change handed on, while the strip now lasts, is attributed to what the earlier one was.
 *
 * <p>Rules CAUSE-1, CAUSE-2, CAUSE-3, CAUSE-4, CAUSE-5.
 */
final class CauseFinder {
    /** Metres, relative to the capacity, by which levels that are meant to be equal may differ. */
    private static final double ROUNDING = 1e-9;

    private final Line line;
    private final StripMargin spare;
    private final double capacity;
    private final double rounding;
    private @Nullable Cause before;

    CauseFinder(Line line) {
        this.line = line;
        this.spare = new StripMargin(line);
        this.capacity = line.accumulator().capacity();
        this.rounding = ROUNDING * Math.max(1, capacity);
    }

    /** What {@code change} is attributed to; empty when it ran through. */
    Optional<Cause> causeOf(ChangeRecord change) {
        before = change.outcome() == Outcome.RAN_THROUGH ? null : find(change);
        return Optional.ofNullable(before);
    }

    private Cause find(ChangeRecord change) {
        if (line.practice().isOneStrip()) {
            return Cause.PRACTICE;
        }
        double margin = spare.metres(change) + rounding;
        if (before != null && margin >= 0) {
            return before;
        }
        double withoutWait = margin + change.ratedSpeed() * change.waiting();
        if (change.waiting() > 0 && withoutWait >= 0) {
            return Cause.PREPARATION;
        }
        double missing = capacity - change.levelAtStart();
        return missing > rounding && withoutWait + missing >= 0 ? Cause.REFILL : Cause.CAPACITY;
    }
}
