package runthrough.plant.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.Line;
import runthrough.plant.Shifts;
import runthrough.plant.Shifts.Break;
import runthrough.plant.Shifts.Shift;
import runthrough.plant.WorkElement;

/**
 * Whether the people suffice for each work element, and whether the breaks of a shift lie within it, one after another.
 *
 * <p>Rules CHECK-26, CHECK-27.
 */
final class CrewCheck {
    private final Line line;
    private final CoilChange change;
    private final Messages messages;
    private final Wording in;

    private CrewCheck(Line line, Messages messages) {
        this.line = line;
        this.change = line.change();
        this.messages = messages;
        this.in = messages.in();
    }

    static void check(Line line, Messages messages) {
        CrewCheck check = new CrewCheck(line, messages);
        check.people(LinePart.PREPARE, check.change.prepare());
        if (line.practice().hasJoiner()) {
            check.people(LinePart.TAIL, check.change.tail());
            check.people(LinePart.JOIN, check.change.join());
        }
        List<Shift> shifts = check.change.shifts().map(Shifts::list).orElse(List.of());
        for (int i = 0; i < shifts.size(); i++) {
            String path = LinePart.SHIFTS.element(i);
            check.breaks(path, shifts.get(i));
            check.nobody(path, shifts.get(i));
            check.smallCrew(path, shifts.get(i));
        }
    }

    private void people(LinePart list, List<WorkElement> elements) {
        for (int i = 0; i < elements.size(); i++) {
            WorkElement element = elements.get(i);
            if (element.people() > change.crew()) {
                messages.error(
                        list.element(i) + "." + element.name() + ".people",
                        people(element.people()) + "; must be at most the "
                                + (change.shifts().isPresent() ? "largest crew of any shift, " : "crew, ")
                                + people(change.crew()),
                        "Give a larger crew, or fewer people for the element.");
            }
        }
    }

    private void breaks(String path, Shift shift) {
        List<Break> breaks = shift.breaks();
        List<Integer> inOrder = IntStream.range(0, breaks.size())
                .boxed()
                .sorted(Comparator.comparing(place -> breaks.get(place).begin()))
                .toList();
        double end = 0;
        for (int place : inOrder) {
            Break one = breaks.get(place);
            String key = LinePart.element(path + ".breaks", place);
            String given = in.time(one.begin()) + " to " + in.time(one.end()) + " after the start of " + shift.name();
            if (Excess.isMore(one.end(), shift.hours())) {
                messages.error(
                        key,
                        given + "; must end within the shift, which lasts " + in.time(shift.hours()),
                        "Let the break begin earlier, or give a shorter one.");
            } else if (Excess.isMore(end, one.begin())) {
                messages.error(
                        key,
                        given + "; must begin when the break before it has ended, at " + in.time(end) + " or later",
                        "Give breaks that do not overlap.");
            }
            end = Math.max(end, one.end());
            if (one.crew() > shift.crew()) {
                messages.warning(
                        key + ".crew",
                        people(one.crew()) + "; should be at most the crew of the shift, " + people(shift.crew()),
                        "Nobody comes for a break: give how many of the shift stay.");
            }
        }
    }

    /** By the clock nobody is ever there; that a break is put off while a coil change lasts is no way to staff a shift. */
    private void nobody(String path, Shift shift) {
        double away = shift.breaks().stream()
                .filter(one -> one.crew() == 0)
                .mapToDouble(Break::length)
                .sum();
        if (away >= shift.hours()) {
            messages.warning(
                    path + ".breaks",
                    "nobody there in all of its " + in.time(shift.hours()) + "; should leave some time with people",
                    "Joints and coils wait for the next shift, but for a break that is put off because a coil change is going"
                            + " on: give shorter breaks, or people who stay.");
        }
    }

    /** The joint would wait for the next shift. */
    private void smallCrew(String path, Shift shift) {
        if (!line.practice().hasJoiner()) {
            return;
        }
        Optional<WorkElement> largest = Stream.concat(change.tail().stream(), change.join().stream())
                .filter(element -> element.people() <= change.crew())
                .max(Comparator.comparingInt(WorkElement::people));
        largest.filter(element -> element.people() > shift.crew())
                .ifPresent(element -> messages.warning(
                        path + ".crew",
                        people(shift.crew()) + " in " + shift.name() + "; should be at least those that "
                                + element.name() + " takes, " + people(element.people()),
                        "A joint waits for a larger crew to come: give a larger crew here, or fewer people for the"
                                + " element."));
    }

    private static String people(int count) {
        return count == 1 ? "1 person" : count + " people";
    }
}
