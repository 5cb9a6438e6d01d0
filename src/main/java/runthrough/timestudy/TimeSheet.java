package runthrough.timestudy;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A time-study sheet: the times of work elements at one coil change after another.
 *
 * @param file it was read from, as the user named it
 * @param elements its columns, at least one; no two have the same part and name
 * @param rows in the order in which they were observed, at least one
 */
public record TimeSheet(String file, List<TimedElement> elements, List<Observation> rows) {

    public TimeSheet {
        elements = List.copyOf(elements);
        rows = List.copyOf(rows);
        if (elements.isEmpty() || rows.isEmpty()) {
            throw new IllegalArgumentException("a sheet needs at least one element and one row");
        }
        for (Observation row : rows) {
            if (row.times().size() != elements.size()) {
                throw new IllegalArgumentException("row " + row.number() + " has "
                        + row.times().size() + " times for " + elements.size() + " elements");
            }
        }
    }

    /** The times of element {@code i}, in the order of the sheet, gaps left out (s). */
    public double[] times(int i) {
        return rows.stream()
                .mapToDouble(row -> row.times().get(i))
                .filter(time -> !Double.isNaN(time))
                .toArray();
    }

    /** The rows in which all of the elements at these places were timed. */
    public List<Observation> complete(List<Integer> places) {
        return rows.stream().filter(row -> row.has(places)).toList();
    }

    /** The places of the elements during which the strip stands. */
    public List<Integer> standing() {
        return IntStream.range(0, elements.size())
                .filter(i -> elements.get(i).isStanding())
                .boxed()
                .toList();
    }

    /** Whether any row carries a rating. */
    public boolean isRated() {
        return rows.stream().anyMatch(row -> row.rating().isPresent());
    }

    /**
     * The same with basic times, observed time x rating / 100, as in G. Kanawaty (ed.), Introduction to Work Study, 4th ed.,
     * International Labour Office, 1992, part on time study (from memory): what a worker of standard performance would take.
     */
    public TimeSheet basicTimes() {
        return new TimeSheet(
                file, elements, rows.stream().map(Observation::basic).toList());
    }

    /** The same without the rows of these {@linkplain Observation#number numbers}; one must be left. */
    public TimeSheet without(Collection<Integer> numbers) {
        return new TimeSheet(
                file,
                elements,
                rows.stream().filter(row -> !numbers.contains(row.number())).toList());
    }
}
