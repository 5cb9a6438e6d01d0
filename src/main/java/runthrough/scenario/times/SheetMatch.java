package runthrough.scenario.times;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.CoilChange;
import runthrough.plant.WorkElement;
import runthrough.scenario.source.Nearest;
import runthrough.timestudy.TimeSheet;
import runthrough.timestudy.TimedElement;
import runthrough.timestudy.TimedElement.Part;

/**
 * Which work elements of a scenario a time-study sheet has times of: those with the same names.
 *
 * @param sheet whose elements were looked for
 * @param places all elements of the scenario
 */
public record SheetMatch(TimeSheet sheet, List<Place> places) {

    public SheetMatch {
        places = List.copyOf(places);
    }

    /**
     * An element of the scenario.
     *
     * @param number in its list, counted from 1
     */
    public record Place(Part part, int number, WorkElement element) {
        /** By which it is set. */
        public String path() {
            return "coil-change." + part.word() + "." + element.name();
        }

        /** By which it is given another time. */
        public String numberedPath() {
            return "coil-change." + part.word() + "[" + number + "]";
        }

        private boolean isCalled(TimedElement timed) {
            return element.name().equalsIgnoreCase(timed.name())
                    && timed.part().map(wanted -> wanted == part).orElse(true);
        }

        private String label() {
            return part.word() + ": " + element.name();
        }
    }

    /** The elements of {@code sheet} against those of {@code change}. */
    public static SheetMatch of(TimeSheet sheet, CoilChange change) {
        return new SheetMatch(
                sheet,
                Stream.of(Part.values())
                        .flatMap(part -> places(part, list(change, part)))
                        .toList());
    }

    private static Stream<Place> places(Part part, List<WorkElement> list) {
        return IntStream.range(0, list.size()).mapToObj(i -> new Place(part, i + 1, list.get(i)));
    }

    private static List<WorkElement> list(CoilChange change, Part part) {
        return switch (part) {
            case PREPARE -> change.prepare();
            case TAIL -> change.tail();
            case JOIN -> change.join();
        };
    }

    /** The element of the scenario that {@code timed} is; empty where it has none. */
    public Optional<Place> place(TimedElement timed) {
        return places.stream().filter(place -> place.isCalled(timed)).findFirst();
    }

    /** What is wrong: a line for each element of the sheet that the scenario has not. */
    public List<String> unknown() {
        return sheet.elements().stream()
                .filter(timed -> place(timed).isEmpty())
                .map(this::unknown)
                .toList();
    }

    private String unknown(TimedElement timed) {
        List<String> labels = places.stream().map(Place::label).toList();
        return sheet.file() + ":1 " + timed.label() + "; the scenario has no such work element. "
                + Nearest.to(timed.label(), labels)
                        .map(nearest -> "Did you mean " + nearest + "?")
                        .orElse("It has " + String.join(", ", labels) + ".");
    }

    /** What to warn of: a line for each element of the scenario that the sheet has no times of. */
    public List<String> untimed() {
        return places.stream()
                .filter(place -> sheet.elements().stream().noneMatch(place::isCalled))
                .map(place -> sheet.file() + " has no times of " + place.label() + "; they stay as the scenario says.")
                .toList();
    }
}
