package runthrough.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Who is there to attend to coil changes, shift by shift. The list repeats from time 0 on. Rule CREW-10.
 *
 * @param list at least one
 */
public record Shifts(List<Shift> list) {
    public Shifts {
        list = List.copyOf(list);
        if (list.isEmpty()) {
            throw new IllegalArgumentException("no shifts; give at least one");
        }
    }

    /** How many people there ever are at the same time: in a break nobody comes who is not there anyway. */
    public int largestCrew() {
        return list.stream().mapToInt(Shift::crew).max().orElseThrow();
    }

    /** By how many people at most a shift or a break in which somebody stays has fewer than the largest shift, {@code >= 0}. */
    public int greatestLack() {
        IntStream crews = list.stream()
                .flatMapToInt(shift -> IntStream.concat(
                        IntStream.of(shift.crew()),
                        shift.breaks().stream().mapToInt(Break::crew).filter(stay -> stay > 0)));
        return largestCrew() - crews.min().orElseThrow();
    }

    /**
     * The same with {@code people} in the largest shift, {@code >= 1}, and as many more or fewer in every other, at least one. In a
     * break as many are away as before; a break that all take is still taken by all.
     */
    public Shifts withLargestCrew(int people) {
        Ranges.of("").atLeastOne("crew", people).refuse();
        int more = people - largestCrew();
        return new Shifts(list.stream().map(shift -> shift.withMore(more)).toList());
    }

    /** The same with a crew of {@code people}, {@code >= 1}, in the shift at {@code place}, from 0; its breaks as they are. */
    public Shifts withCrewOf(int place, int people) {
        List<Shift> others = new ArrayList<>(list);
        others.set(place, list.get(place).withMore(people - list.get(place).crew()));
        return new Shifts(others);
    }

    /** The same without any break. */
    public Shifts withoutBreaks() {
        return new Shifts(list.stream()
                .map(shift -> new Shift(shift.name(), shift.hours(), shift.crew(), List.of()))
                .toList());
    }

    /** How long all breaks of all shifts take together (s). */
    public double breakTime() {
        return list.stream()
                .flatMap(shift -> shift.breaks().stream())
                .mapToDouble(Break::length)
                .sum();
    }

    /** How many people are paid for at a time, on average over all hours; breaks included. Rule CREW-16. */
    public double paidPeople() {
        return list.stream().mapToDouble(shift -> shift.crew() * shift.hours()).sum() / length();
    }

    /** How long they all take together (s), after which they repeat. */
    public double length() {
        return list.stream().mapToDouble(Shift::hours).sum();
    }

    /**
     * One shift.
     *
     * @param name how the user calls it, for reports
     * @param hours how long it lasts (s), {@code > 0}
     * @param crew how many people, {@code >= 1}
     * @param breaks in any order; the check of the line refuses those that overlap or leave the shift
     */
    public record Shift(String name, double hours, int crew, List<Break> breaks) {
        public Shift {
            Ranges.of("shift")
                    .finitePositive("hours", hours, Ranges.Of.TIME)
                    .atLeastOne("crew", crew)
                    .refuse();
            breaks = List.copyOf(breaks);
        }

        private Shift withMore(int more) {
            return new Shift(
                    name,
                    hours,
                    Math.max(1, crew + more),
                    breaks.stream().map(one -> one.withMore(more)).toList());
        }

        /** How it is called when it has no name of its own: by its place, from 0. */
        public static String nameByPlace(int index) {
            return "shift " + (index + 1);
        }
    }

    /**
     * A part of a shift with another number of people.
     *
     * @param begin after the start of the shift (s), {@code >= 0}
     * @param length (s), {@code > 0}
     * @param crew how many people stay, {@code >= 0}
     */
    public record Break(double begin, double length, int crew) {
        public Break {
            Ranges.of("break")
                    .notNegative("begin", begin, Ranges.Of.TIME)
                    .finitePositive("length", length, Ranges.Of.TIME)
                    .count("crew", crew)
                    .refuse();
        }

        private Break withMore(int more) {
            return new Break(begin, length, crew == 0 ? 0 : Math.max(0, crew + more));
        }

        /** When it ends, after the start of the shift (s). */
        public double end() {
            return begin + length;
        }
    }
}
