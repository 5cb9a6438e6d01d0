package runthrough.plant.builder;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import runthrough.plant.Entry;
import runthrough.plant.check.LinePart;

/** How coils come into the line: the entry section. */
abstract class EntrySteps<B> extends PartSteps<B> {
    private boolean hasEntry;
    private Entry entry = new Entry(1, 1, AT_ONCE, AT_ONCE, Optional.empty(), 0);

    /**
     * The drive of the entry section.
     *
     * @param topSpeed greatest strip speed (m/s), {@code > 0}
     * @param acceleration (m/s2), {@code > 0}
     * @param deceleration (m/s2), {@code > 0}
     */
    public B entry(double topSpeed, double acceleration, double deceleration) {
        hasEntry = true;
        refusals.tell(LinePart.TOP_SPEED, () -> entry = entry.withTopSpeed(topSpeed));
        refusals.tell(
                LinePart.ENTRY_ACCELERATION,
                () -> entry = new Entry(
                        entry.uncoilers(),
                        entry.topSpeed(),
                        acceleration,
                        entry.deceleration(),
                        entry.creep(),
                        entry.uncoilerPath()));
        refusals.tell(
                LinePart.ENTRY_DECELERATION,
                () -> entry = new Entry(
                        entry.uncoilers(),
                        entry.topSpeed(),
                        entry.acceleration(),
                        deceleration,
                        entry.creep(),
                        entry.uncoilerPath()));
        return self();
    }

    /** The entry section as a whole, in the place of what was said of it. */
    public B entry(Entry whole) {
        Objects.requireNonNull(whole, "whole");
        hasEntry = true;
        entry = whole;
        return self();
    }

    /** How many uncoilers, {@code >= 1}. */
    public B uncoilers(int number) {
        refusals.tell(LinePart.UNCOILERS, () -> entry = entry.withUncoilers(number));
        return self();
    }

    /** Strip path from uncoiler to joiner (m), {@code >= 0}. */
    public B uncoilerPath(double path) {
        refusals.tell(LinePart.UNCOILER_PATH, () -> entry = with(entry.creep(), path));
        return self();
    }

    /**
     * Slow running before the tail of a coil.
     *
     * @param speed (m/s), {@code > 0}
     * @param length over which it is held (m), {@code > 0}
     */
    public B creep(double speed, double length) {
        refusals.tell(
                LinePart.CREEP, () -> entry = with(Optional.of(new Entry.Creep(speed, length)), entry.uncoilerPath()));
        return self();
    }

    private Entry with(Optional<Entry.Creep> creep, double uncoilerPath) {
        return new Entry(
                entry.uncoilers(), entry.topSpeed(), entry.acceleration(), entry.deceleration(), creep, uncoilerPath);
    }

    /** The entry section as described; none when its drive was not given. */
    final @Nullable Entry describedEntry() {
        return hasEntry ? entry : null;
    }
}
