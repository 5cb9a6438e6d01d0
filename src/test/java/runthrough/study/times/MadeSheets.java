package runthrough.study.times;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.simulation.random.Draws;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;
import runthrough.timestudy.TimedElement;

/** Sheets made for tests. */
public final class MadeSheets {
    private MadeSheets() {}

    /** One column for each array, all of the same length. */
    public static TimeSheet of(double[]... columns) {
        List<TimedElement> elements = IntStream.range(0, columns.length)
                .mapToObj(i -> new TimedElement(Optional.empty(), "e" + (i + 1), i + 1))
                .toList();
        List<Observation> rows = new ArrayList<>();
        for (int r = 0; r < columns[0].length; r++) {
            int row = r;
            List<Double> times =
                    Arrays.stream(columns).map(column -> column[row]).toList();
            rows.add(new Observation(r + 1, r + 2, times, OptionalDouble.empty(), "", ""));
        }
        return new TimeSheet("made.csv", elements, rows);
    }

    /** {@code n} draws from {@code distribution}. */
    public static double[] drawn(Distribution distribution, int n, Draws draws) {
        return IntStream.range(0, n)
                .mapToDouble(i -> distribution.quantile(draws.next()))
                .toArray();
    }
}
