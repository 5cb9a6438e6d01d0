package runthrough.plant.builder;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.check.LinePart;
import runthrough.plant.check.Message;
import runthrough.plant.check.StandIn;

/** The people and the work of a coil change. */
abstract class WorkSteps<B> extends ProcessSteps<B> {
    private Twice<CoilChange> change =
            Twice.alike(new CoilChange(1, List.of(), List.of(), List.of(), new Reject.Never()));
    /** Who is there at all hours, where that was said after {@link #change}. */
    private @Nullable Twice<Integer> crew;

    private int crewGiven;
    private Twice<List<Shift>> shifts = Twice.alike(List.of());
    /** Whether shifts were said after {@link #change}. */
    private boolean hasShifts;

    /** All work of a coil change, in the place of what was said of it. */
    public B change(CoilChange whole) {
        Objects.requireNonNull(whole, "whole");
        crew = null;
        hasShifts = false;
        shifts = Twice.alike(whole.shifts().map(Shifts::list).orElse(List.of()));
        change = Twice.alike(whole);
        return self();
    }

    /** How many people attend to coil changes, {@code >= 1}, at all hours; not beside shifts. */
    public B crew(int people) {
        crewGiven = people;
        crew = refusals.step(
                        LinePart.WORK, change, (now, numbers) -> now.withCrewAlwaysThere(numbers.of("crew", people)))
                .to(CoilChange::crew);
        return self();
    }

    /** Who attends to coil changes at which hours; not beside a crew that is always there. The shifts repeat from time 0. */
    public B shifts(Shifts whole) {
        Objects.requireNonNull(whole, "whole");
        hasShifts = true;
        shifts = Twice.alike(whole.list());
        return self();
    }

    /**
     * Adds a shift after those given before; not beside a crew that is always there.
     *
     * @param name for reports
     * @param hours how long it lasts (s), {@code > 0}
     * @param people who attend to coil changes in it, {@code >= 1}
     * @param breaks in it, which must not overlap: begin after the start of the shift (s), length (s), people who stay
     */
    public B shift(String name, double hours, int people, Shifts.Break... breaks) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(breaks, "breaks");
        hasShifts = true;
        int place = shifts.mild().size() + 1;
        shifts = refusals.step(
                LinePart.SHIFTS.path() + "[" + place + "]",
                shifts,
                (now, numbers) -> and(
                        now, new Shift(name, numbers.of("hours", hours), numbers.of("crew", people), List.of(breaks))));
        return self();
    }

    /** Adds work on the next coil, done while the line runs: it takes {@code time} (s) at every coil change. */
    public B prepare(String name, Distribution time) {
        return prepare(always(name, time));
    }

    /**
     * Adds work on the next coil, done while the line runs. How many people it takes, whether it may be put down for work on the
     * joint, and at which coil changes it is done stand in {@code element}, see {@link WorkElement#withPeople}, {@link
     * WorkElement#notToBePutDown} and {@link WorkElement.Occurrence}.
     */
    public B prepare(WorkElement element) {
        Objects.requireNonNull(element, "element");
        change = change.changed(now -> now.withWork(and(now.prepare(), element), now.tail(), now.join()));
        return self();
    }

    /** Adds work that needs the tail only, strip standing: it takes {@code time} (s) at every coil change and pass. */
    public B tail(String name, Distribution time) {
        return tail(always(name, time));
    }

    /** Adds work that needs the tail only, strip standing. */
    public B tail(WorkElement element) {
        Objects.requireNonNull(element, "element");
        change = change.changed(now -> now.withWork(now.prepare(), and(now.tail(), element), now.join()));
        return self();
    }

    /** Adds work that needs both coils, strip standing: it takes {@code time} (s) at every coil change and pass. */
    public B join(String name, Distribution time) {
        return join(always(name, time));
    }

    /** Adds work that needs both coils, strip standing. */
    public B join(WorkElement element) {
        Objects.requireNonNull(element, "element");
        change = change.changed(now -> now.withWork(now.prepare(), now.tail(), and(now.join(), element)));
        return self();
    }

    /** How often a joint is made again. */
    public B reject(Reject how) {
        Objects.requireNonNull(how, "how");
        change = change.changed(now -> now.withReject(how));
        return self();
    }

    /** Each joint is rejected with this chance, in [0, 1). */
    public B rejectChance(double chance) {
        change = refusals.step(
                LinePart.REJECT,
                change,
                (now, numbers) -> now.withReject(new Reject.Chance(numbers.of("chance", chance))));
        return self();
    }

    private static <T> List<T> and(List<T> all, T more) {
        return Stream.concat(all.stream(), Stream.of(more)).toList();
    }

    private static WorkElement always(String name, Distribution time) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(time, "time");
        return new WorkElement(name, new WorkTime.Timed(time), new Occurrence.Always(), true);
    }

    /** What is wrong with crew and shifts together. Rule CHECK-27. */
    final Optional<Message> crewBesideShifts() {
        return crew == null || !hasShifts
                ? Optional.empty()
                : Optional.of(new Message(
                        Message.Severity.ERROR,
                        LinePart.CREW.path(),
                        crewGiven + "; must not stand beside " + LinePart.SHIFTS.path(),
                        "Leave out the crew, or the shifts."));
    }

    /** The work as described; with crew and shifts both given, each of them is there once. */
    final CoilChange describedWork(StandIn standIn) {
        CoilChange described = change.with(standIn);
        if (crew != null && (!hasShifts || standIn == StandIn.MILD)) {
            return described.withCrewAlwaysThere(crew.with(standIn));
        }
        List<Shift> list = shifts.with(standIn);
        return list.isEmpty() ? described : described.withShifts(new Shifts(list));
    }
}
