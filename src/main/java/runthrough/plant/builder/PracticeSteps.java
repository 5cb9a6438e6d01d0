package runthrough.plant.builder;

import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Accumulator;
import runthrough.plant.Distribution;
import runthrough.plant.Practice;
import runthrough.plant.StorageForm;
import runthrough.plant.check.LinePart;
import runthrough.plant.check.StandIn;

/** How the line gets from one coil to the next, and the accumulator. */
abstract class PracticeSteps<B> extends EntrySteps<B> {
    private @Nullable Function<Accumulator, Practice> practice;
    private Twice<Accumulator> accumulator = Twice.alike(Accumulator.none());

    /** Joins with an accumulator of usable capacity {@code capacity} (m), {@code > 0}. */
    public B capacity(double capacity) {
        return storedIn(numbers -> new StorageForm.Direct(numbers.of("capacity", capacity)));
    }

    /**
     * Joins with an accumulator of strands that lengthen between fixed rolls and a carriage, see {@link StorageForm.Strands}.
     *
     * @param strands how many lengthen, {@code >= 1}
     * @param stroke carriage travel (m), {@code > 0}
     * @param fillingSpeed greatest carriage speed when filling (m/s), {@code > 0}, infinite for no limit
     * @param emptyingSpeed greatest carriage speed when emptying (m/s), {@code > 0}, infinite for no limit
     */
    public B strands(int strands, double stroke, double fillingSpeed, double emptyingSpeed) {
        return storedIn(numbers -> new StorageForm.Strands(
                numbers.of("strands", strands),
                numbers.of("stroke", stroke),
                numbers.of("carriage speed", fillingSpeed),
                numbers.of("emptying speed", emptyingSpeed),
                false));
    }

    /**
     * Joins with an accumulator of free loops in a pit, see {@link StorageForm.FreeLoop}.
     *
     * @param loops how many, {@code >= 1}
     * @param span distance between the supports (m), {@code > 0}
     * @param greatestSag sag of the full loop (m), {@code >= leastSag}
     * @param leastSag sag of the empty loop (m), {@code >= 0}
     */
    public B loops(int loops, double span, double greatestSag, double leastSag) {
        return storedIn(numbers -> numbers.areAsGiven()
                ? new StorageForm.FreeLoop(loops, span, greatestSag, leastSag)
                : numbers.standIn().accumulator().form());
    }

    /**
     * Joins with a floor spiral, see {@link StorageForm.Spiral}.
     *
     * @param wraps how many, {@code > 0}
     * @param fullDiameter mean diameter of a wrap when full (m), {@code >= emptyDiameter}
     * @param emptyDiameter mean diameter of a wrap when empty (m), {@code > 0}
     */
    public B spiral(double wraps, double fullDiameter, double emptyDiameter) {
        return storedIn(numbers -> numbers.areAsGiven()
                ? new StorageForm.Spiral(wraps, fullDiameter, emptyDiameter)
                : numbers.standIn().accumulator().form());
    }

    /** Joins with an accumulator of this form; what was said of its limits stays. */
    public B accumulator(StorageForm form) {
        Objects.requireNonNull(form, "form");
        return storedIn(numbers -> form);
    }

    private B storedIn(Function<StepNumbers, StorageForm> form) {
        practice = Practice.JoinWithAccumulator::new;
        return say((now, numbers) -> now.with(form.apply(numbers)));
    }

    /** Joins with this accumulator. */
    public B accumulator(Accumulator whole) {
        Objects.requireNonNull(whole, "whole");
        return practice(new Practice.JoinWithAccumulator(whole));
    }

    /** Limit of the accumulator on entry speed minus process speed (m/s), {@code > 0}, infinite for no limit. */
    public B fillRateLimit(double limit) {
        return say((now, numbers) -> new Accumulator(
                now.form(), numbers.of("fill-rate limit", limit), now.reserve(), now.overtravelAllowance()));
    }

    /** Strip in the accumulator that is never planned to be used (m), {@code >= 0}. */
    public B reserve(double metres) {
        return say((now, numbers) -> new Accumulator(
                now.form(), now.ownFillRateLimit(), numbers.of("reserve", metres), now.overtravelAllowance()));
    }

    /** Strip above the capacity from which the accumulator counts as overfull (m), {@code >= 0}, infinite where it is not counted. */
    public B overtravelAllowance(double metres) {
        return say((now, numbers) -> new Accumulator(
                now.form(), now.ownFillRateLimit(), now.reserve(), numbers.of("overtravel allowance", metres)));
    }

    private B say(BiFunction<Accumulator, StepNumbers, Accumulator> step) {
        accumulator = refusals.step(LinePart.ACCUMULATOR, accumulator, step);
        return self();
    }

    /** How the line gets from one coil to the next, with what only that practice needs. */
    public B practice(Practice how) {
        Objects.requireNonNull(how, "how");
        if (how instanceof Practice.JoinWithAccumulator join) {
            accumulator = Twice.alike(join.accumulator());
            practice = Practice.JoinWithAccumulator::new;
        } else {
            practice = any -> how;
        }
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

    /** Whether the practice was given. */
    final boolean hasPractice() {
        return practice != null;
    }

    /** The practice as described; what stands in for it where none was given. */
    final Practice describedPractice(StandIn standIn) {
        return practice == null ? standIn.practice() : practice.apply(accumulator.with(standIn));
    }
}
