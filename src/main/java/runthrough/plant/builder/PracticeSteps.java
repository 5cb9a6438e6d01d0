package runthrough.plant.builder;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Practice;
import runthrough.plant.StorageForm;
import runthrough.plant.check.LinePart;

/** How the line gets from one coil to the next, and the accumulator. */
abstract class PracticeSteps<B> extends EntrySteps<B> {
    private @Nullable Practice practice;
    private Accumulator accumulator = Accumulator.none();

    /** Joins with an accumulator of usable capacity {@code capacity} (m). */
    public B capacity(double capacity) {
        refusals.tell(LinePart.ACCUMULATOR, () -> storedIn(new StorageForm.Direct(capacity)));
        return self();
    }

    /** Joins with an accumulator of this form; what was said of its limits stays. */
    public B accumulator(StorageForm form) {
        Objects.requireNonNull(form, "form");
        storedIn(form);
        return self();
    }

    /** Joins with this accumulator. */
    public B accumulator(Accumulator whole) {
        Objects.requireNonNull(whole, "whole");
        accumulator = whole;
        return practice(new Practice.JoinWithAccumulator(whole));
    }

    private void storedIn(StorageForm form) {
        accumulator(new Accumulator(
                form, accumulator.ownFillRateLimit(), accumulator.reserve(), accumulator.overtravelAllowance()));
    }

    /** Limit of the accumulator on entry speed minus process speed (m/s), {@code > 0}. */
    public B fillRateLimit(double limit) {
        refusals.tell(
                LinePart.FILL_RATE_LIMIT,
                () -> limits(limit, accumulator.reserve(), accumulator.overtravelAllowance()));
        return self();
    }

    /** Strip in the accumulator that is never planned to be used (m), {@code >= 0}. */
    public B reserve(double metres) {
        refusals.tell(
                LinePart.RESERVE,
                () -> limits(accumulator.ownFillRateLimit(), metres, accumulator.overtravelAllowance()));
        return self();
    }

    /** Strip above the capacity from which the accumulator counts as overfull (m), {@code >= 0}. */
    public B overtravelAllowance(double metres) {
        refusals.tell(
                LinePart.OVERTRAVEL_ALLOWANCE,
                () -> limits(accumulator.ownFillRateLimit(), accumulator.reserve(), metres));
        return self();
    }

    private void limits(double fillRate, double reserve, double allowance) {
        accumulator = new Accumulator(accumulator.form(), fillRate, reserve, allowance);
        if (practice instanceof Practice.JoinWithAccumulator) {
            practice = new Practice.JoinWithAccumulator(accumulator);
        }
    }

    /** How the line gets from one coil to the next, with what only that practice needs. */
    public B practice(Practice how) {
        Objects.requireNonNull(how, "how");
        practice = how;
        return self();
    }

    /** Joins without an accumulator: entry and process are one strip, and stand during the joint. */
    public B withoutAccumulator() {
        return practice(new Practice.JoinWithoutAccumulator());
    }

    /** Does not join: the line stops at each coil change and is threaded anew, which takes {@code time} (s). */
    public B rethread(Distribution time) {
        Objects.requireNonNull(time, "time");
        return practice(new Practice.Rethread(time));
    }

    /** The practice as described; none when it was not given. */
    final @Nullable Practice describedPractice() {
        return practice;
    }
}
