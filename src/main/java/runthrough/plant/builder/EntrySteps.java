package runthrough.plant.builder;

import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import runthrough.plant.Entry;
import runthrough.plant.check.LinePart;
import runthrough.plant.check.StandIn;

/** How coils come into the line: the entry section. */
abstract class EntrySteps<B> extends PartSteps<B> {
    private boolean hasEntry;
    private Twice<Entry> entry = Twice.alike(new Entry(1, 1, AT_ONCE, AT_ONCE, Optional.empty(), 0));

    /**
     * The drive of the entry section.
     *
     * @param topSpeed greatest strip speed (m/s), {@code > 0}
     * @param acceleration (m/s2), {@code > 0}
     * @param deceleration (m/s2), {@code > 0}
     */
    public B entry(double topSpeed, double acceleration, double deceleration) {
        hasEntry = true;
        return say((now, numbers) -> new Entry(
                now.uncoilers(),
                numbers.of("top speed", topSpeed),
                numbers.of("acceleration", acceleration),
                numbers.of("deceleration", deceleration),
                now.creep(),
                now.uncoilerPath()));
    }

    /** The entry section as a whole, in the place of what was said of it. */
    public B entry(Entry whole) {
        Objects.requireNonNull(whole, "whole");
        hasEntry = true;
        entry = Twice.alike(whole);
        return self();
    }

    /** How many uncoilers, {@code >= 1}. */
    public B uncoilers(int number) {
        return say((now, numbers) -> now.withUncoilers(numbers.of("uncoilers", number)));
    }

    /** Strip path from uncoiler to joiner (m), {@code >= 0}. */
    public B uncoilerPath(double path) {
        return say((now, numbers) -> with(now, now.creep(), numbers.of("uncoiler path", path)));
    }

    /**
     * Slow running before the tail of a coil.
     *
     * @param speed (m/s), {@code > 0}
     * @param length over which it is held (m), {@code > 0}
     */
    public B creep(double speed, double length) {
        entry = refusals.step(
                LinePart.CREEP,
                entry,
                (now, numbers) -> with(
                        now,
                        Optional.of(new Entry.Creep(numbers.of("speed", speed), numbers.of("length", length))),
                        now.uncoilerPath()));
        return self();
    }

    private B say(BiFunction<Entry, StepNumbers, Entry> step) {
        entry = refusals.step(LinePart.ENTRY, entry, step);
        return self();
    }

    private static Entry with(Entry entry, Optional<Entry.Creep> creep, double uncoilerPath) {
        return new Entry(
                entry.uncoilers(), entry.topSpeed(), entry.acceleration(), entry.deceleration(), creep, uncoilerPath);
    }

    /** Whether its drive was given. */
    final boolean hasEntry() {
        return hasEntry;
    }

    /** The entry section as described; what stands in for it where its drive was not given. */
    final Entry describedEntry(StandIn standIn) {
        return hasEntry ? entry.with(standIn) : standIn.entry();
    }
}
