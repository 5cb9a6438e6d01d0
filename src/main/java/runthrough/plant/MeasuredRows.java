package runthrough.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Times of several work elements, measured together: each row is a coil change that was observed, each column an element. At a
 * coil change all elements that take their times from the same rows take the same row, so that who is slow at one is slow at
 * the others as they were seen to be.
 *
 * <p>A blank was not timed: that element then draws from the other values of its own column.
 *
 * <p>Rule CHANGE-5.
 */
public final class MeasuredRows {
    private final String source;
    private final double[][] rows;
    private final Distribution[] columns;

    private MeasuredRows(String source, double[][] rows, Distribution[] columns) {
        this.source = source;
        this.rows = rows;
        this.columns = columns;
    }

    /**
     * Rows of times (s), {@code >= 0}; NaN for a blank.
     *
     * @param source they come from, for reports
     * @param rows at least one, all of the same length, with a value in every column at least once
     */
    public static MeasuredRows of(String source, List<List<Double>> rows) {
        double[][] values = rows.stream()
                .map(row -> row.stream().mapToDouble(Double::doubleValue).toArray())
                .toArray(double[][]::new);
        if (values.length == 0 || Arrays.stream(values).anyMatch(row -> row.length != values[0].length)) {
            throw new IllegalArgumentException("rows of " + source + "; must be at least one, all of the same length");
        }
        return new MeasuredRows(source, values, columns(values, null));
    }

    /** @param otherwise what to draw from where a column has nothing but blanks */
    private static Distribution[] columns(double[][] rows, Distribution @Nullable [] otherwise) {
        return IntStream.range(0, rows[0].length)
                .mapToObj(column -> {
                    List<Double> values = Arrays.stream(rows)
                            .map(row -> row[column])
                            .filter(value -> !value.isNaN())
                            .toList();
                    return values.isEmpty() && otherwise != null ? otherwise[column] : Distribution.observed(values);
                })
                .toArray(Distribution[]::new);
    }

    /** Where they come from. */
    public String source() {
        return source;
    }

    /** How many rows. */
    public int count() {
        return rows.length;
    }

    /** How many columns. */
    public int width() {
        return columns.length;
    }

    /** The time (s) in a row and a column, both from 0; NaN where it is blank. */
    public double value(int row, int column) {
        return rows[row][column];
    }

    /** Whether any row of a column is blank. */
    public boolean hasBlank(int column) {
        return Arrays.stream(rows).anyMatch(row -> Double.isNaN(row[column]));
    }

    /** The distribution of a column by itself, blanks left out. */
    public Distribution column(int column) {
        return columns[column];
    }

    /**
     * The rows at these places, as often as they are named, as if they had been observed instead. A column that has nothing but
     * blanks in them keeps the distribution that it had.
     *
     * @param places from 0, at least one
     */
    public MeasuredRows resampled(int[] places) {
        double[][] taken = Arrays.stream(places).mapToObj(place -> rows[place]).toArray(double[][]::new);
        return new MeasuredRows(source, taken, columns(taken, columns));
    }

    /** All different rows that the elements of {@code change} take their times from, in the order of the elements. */
    public static List<MeasuredRows> in(CoilChange change) {
        List<MeasuredRows> all = new ArrayList<>();
        for (List<WorkElement> list : List.of(change.prepare(), change.tail(), change.join())) {
            for (WorkElement element : list) {
                if (element.time() instanceof WorkElement.WorkTime.FromRows from && !all.contains(from.rows())) {
                    all.add(from.rows());
                }
            }
        }
        return all;
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof MeasuredRows measured
                        && source.equals(measured.source)
                        && Arrays.deepEquals(rows, measured.rows));
    }

    @Override
    public int hashCode() {
        return 31 * source.hashCode() + Arrays.deepHashCode(rows);
    }

    @Override
    public String toString() {
        return count() + " rows of " + source;
    }
}
