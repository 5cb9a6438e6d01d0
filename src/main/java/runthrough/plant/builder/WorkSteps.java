package runthrough.plant.builder;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilChange.Reject;
import runthrough.plant.Distribution;
import runthrough.plant.Shifts;
import runthrough.plant.WorkElement;
import runthrough.plant.WorkElement.Occurrence;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.plant.check.LinePart;

/** The people and the work of a coil change. */
abstract class WorkSteps<B> extends ProcessSteps<B> {
    private CoilChange change = new CoilChange(1, List.of(), List.of(), List.of(), new Reject.Never());
    /** 0 where none is given. */
    private int crewGiven;

    private boolean hasShifts;
    /** By one call each or as a whole, those that were refused with them. */
    private int shiftsGiven;

    /** All work of a coil change, in the place of what was said of it. */
    public B change(CoilChange whole) {
        Objects.requireNonNull(whole, "whole");
        crewGiven = 0;
        hasShifts = false;
        shiftsGiven = whole.shifts().map(given -> given.list().size()).orElse(0);
        return work(whole);
    }

    private B work(CoilChange whole) {
        change = whole;
        return self();
    }

    /** How many people attend to coil changes, {@code >= 1}, at all hours; not beside shifts. */
    public B crew(int people) {
        crewGiven = people;
        refusals.tell(
                LinePart.CREW,
                () -> change = new CoilChange(people, change.prepare(), change.tail(), change.join(), change.reject()));
        return self();
    }

    /** Who attends to coil changes at which hours; not beside a crew that is always there. The shifts repeat from time 0. */
    public B shifts(Shifts whole) {
        Objects.requireNonNull(whole, "whole");
        hasShifts = true;
        shiftsGiven = whole.list().size();
        return work(change.withShifts(whole));
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
        shiftsGiven++;
        refusals.tell(LinePart.SHIFTS, LinePart.SHIFTS.path() + "[" + shiftsGiven + "]", () -> {
            List<Shifts.Shift> all =
                    new ArrayList<>(change.shifts().map(Shifts::list).orElse(List.of()));
            all.add(new Shifts.Shift(name, hours, people, List.of(breaks)));
            work(change.withShifts(new Shifts(all)));
        });
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
        return work(and(change.prepare(), element), change.tail(), change.join());
    }

    /** Adds work that needs the tail only, strip standing: it takes {@code time} (s) at every coil change and pass. */
    public B tail(String name, Distribution time) {
        return tail(always(name, time));
    }

    /** Adds work that needs the tail only, strip standing. */
    public B tail(WorkElement element) {
        return work(change.prepare(), and(change.tail(), element), change.join());
    }

    /** Adds work that needs both coils, strip standing: it takes {@code time} (s) at every coil change and pass. */
    public B join(String name, Distribution time) {
        return join(always(name, time));
    }

    /** Adds work that needs both coils, strip standing. */
    public B join(WorkElement element) {
        return work(change.prepare(), change.tail(), and(change.join(), element));
    }

    /** How often a joint is made again. */
    public B reject(Reject how) {
        Objects.requireNonNull(how, "how");
        return work(change.withReject(how));
    }

    /** Each joint is rejected with this chance, in [0, 1). */
    public B rejectChance(double chance) {
        refusals.tell(LinePart.REJECT, () -> reject(new Reject.Chance(chance)));
        return self();
    }

    private B work(List<WorkElement> prepare, List<WorkElement> tail, List<WorkElement> join) {
        return work(change.withWork(prepare, tail, join));
    }

    private static List<WorkElement> and(List<WorkElement> elements, WorkElement more) {
        Objects.requireNonNull(more, "element");
        List<WorkElement> all = new ArrayList<>(elements);
        all.add(more);
        return all;
    }

    private static WorkElement always(String name, Distribution time) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(time, "time");
        return new WorkElement(name, new WorkTime.Timed(time), new Occurrence.Always(), true);
    }

    /** Refuses a crew beside shifts. Rule CHECK-27. */
    final void checkWork() {
        if (crewGiven != 0 && hasShifts) {
            refusals.refuse(
                    LinePart.CREW,
                    crewGiven + "; must not stand beside " + LinePart.SHIFTS.path(),
                    "Leave out the crew, or the shifts.");
        }
    }

    /** The work as described. */
    final CoilChange describedWork() {
        return change;
    }
}
