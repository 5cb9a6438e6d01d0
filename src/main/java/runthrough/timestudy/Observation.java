package runthrough.timestudy;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One observed coil change: a row of a time-study sheet.
 *
 * @param number counted from 1 in the order of the sheet; it stays when other rows are left out
 * @param line of the file on which the row begins, counted from 1
 * @param times of each element (s), {@code >= 0}; NaN where it was not timed
 * @param rating of the performance seen, as a share of standard performance, {@code > 0}; empty where it was not rated
 * @param label what identifies the row in the sheet: number, date, coil; may be empty
 * @param remark of the observer; may be empty
 */
public record Observation(
        int number, int line, List<Double> times, OptionalDouble rating, String label, String remark) {

    public Observation {
        times = List.copyOf(times);
        for (double time : times) {
            if (time < 0 || Double.isInfinite(time)) {
                throw new IllegalArgumentException(
                        "row " + number + " has a time of " + time + " s; must be 0 or more");
            }
        }
        if (rating.isPresent() && !(rating.getAsDouble() > 0)) {
            throw new IllegalArgumentException(
                    "row " + number + " has a rating of " + rating.getAsDouble() + "; must be more than 0");
        }
    }

    /** Whether all of the elements at these places were timed. */
    public boolean has(List<Integer> elements) {
        return elements.stream().noneMatch(element -> times.get(element).isNaN());
    }

    /** With basic times: each time multiplied by the rating; a row without a rating counts as rated 100. Gaps stay. */
    Observation basic() {
        double factor = rating.orElse(1);
        List<Double> basic = times.stream()
                .map(time ->
                        time.isNaN() ? time : StandardTime.of(time, factor, 0).basic())
                .toList();
        return new Observation(number, line, basic, rating, label, remark);
    }
}
