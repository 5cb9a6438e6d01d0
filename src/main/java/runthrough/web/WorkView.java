package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.plant.Line;
import runthrough.plant.WorkElement;
import runthrough.quantity.Notation;
import runthrough.quantity.UnitSystem;
import runthrough.report.described.InputTexts;
import runthrough.report.described.WorkTable;
import runthrough.scenario.WrittenElement;
import runthrough.scenario.source.Raw;

/**
 * An element of work as the page shows it.
 *
 * @param kind key of the way in which its time is given, such as {@code triangular}
 * @param values of that way as they stand in the file; none where they are not a few
 * @param beside what else is said of it, in words
 * @param mean of the time (s) that it takes once, at all joints of the line
 * @param spark density of its drawn time at even steps, for a small picture; a single value for a time that never varies
 * @param words what the picture shows
 * @param from where the time came from, as the file says; empty where it does not
 * @param assumed whether that is an assumption, to be replaced
 */
record WorkView(
        String name,
        String kind,
        List<String> values,
        String beside,
        double mean,
        List<Double> spark,
        String words,
        String from,
        boolean assumed) {
    private static final int STEPS = 40;

    /** How much of a distribution the picture shows. */
    private static final double MOST = 0.995;

    /** Of so many values each has a field of its own. */
    private static final int MOST_VALUES = 3;

    private static final String TRAVEL = "travel";
    private static final String OBSERVED = "observed";

    WorkView {
        values = List.copyOf(values);
        spark = List.copyOf(spark);
    }

    /**
     * The elements of one list.
     *
     * @param written that list in the file
     * @param from where the time of an element came from, by its name
     */
    static List<WorkView> all(
            List<WorkElement> elements,
            Raw.Sequence written,
            UnaryOperator<String> from,
            Line line,
            UnitSystem system) {
        InputTexts texts = new InputTexts(system);
        return IntStream.range(0, elements.size())
                .mapToObj(i -> of(elements.get(i), written.items().get(i), from, mean(elements.get(i), line), texts))
                .toList();
    }

    private static WorkView of(
            WorkElement element, Raw written, UnaryOperator<String> from, double mean, InputTexts texts) {
        Distribution distribution = element.time().drawn();
        WrittenElement text = WrittenElement.of(written).orElseThrow();
        String words = distribution.isConstant()
                ? "always " + time(distribution.mean())
                : "half within " + time(distribution.quantile(0.5)) + ", 95 % within "
                        + time(distribution.quantile(0.95));
        String origin = from.apply(element.name());
        return new WorkView(
                element.name(),
                text.timeKey(),
                values(text),
                WorkTable.beside(element, texts),
                mean,
                density(distribution),
                words,
                origin,
                Assumptions.is(origin));
    }

    private static double mean(WorkElement element, Line line) {
        return line.coilSource().mean(kind -> line.coilSource().joints(kind).mean(element::meanDuration));
    }

    /** Those of its kind; of a travel also what is added to it; measured ones together, however many they are. */
    private static List<String> values(WrittenElement element) {
        List<String> values = element.values(element.timeKey());
        if (element.timeKey().equals(TRAVEL) && values.size() == 1) {
            List<String> plus = element.values("plus");
            return List.of(values.get(0), plus.isEmpty() ? "0 s" : plus.get(0));
        }
        if (element.timeKey().equals(OBSERVED)) {
            return List.of(String.join(", ", values));
        }
        return values.size() > MOST_VALUES ? List.of() : values;
    }

    private static String time(double seconds) {
        return Notation.time(seconds).text(seconds);
    }

    /** By differences of the distribution function, which observed values have, too. */
    private static List<Double> density(Distribution distribution) {
        if (distribution.isConstant()) {
            return List.of(1.0);
        }
        double from = distribution.quantile(1 - MOST);
        double to = distribution.quantile(MOST);
        List<Double> density = new ArrayList<>();
        double before = distribution.cumulative(from);
        for (int i = 1; i <= STEPS; i++) {
            double now = distribution.cumulative(from + (to - from) * i / STEPS);
            density.add(Math.max(0, now - before));
            before = now;
        }
        return density;
    }
}
