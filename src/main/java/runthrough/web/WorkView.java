package runthrough.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import runthrough.plant.Distribution;
import runthrough.plant.WorkElement;
import runthrough.quantity.Notation;
import runthrough.scenario.source.FlowText;
import runthrough.scenario.source.Raw;

/**
 * An element of work as the page shows it.
 *
 * @param distribution its time as it stands in the file, on one line
 * @param mean of its drawn time (s)
 * @param spark density of its drawn time at even steps, for a small picture; a single value for a time that never varies
 * @param words what the picture shows
 */
record WorkView(String name, String distribution, double mean, List<Double> spark, String words) {
    private static final int STEPS = 40;

    /** How much of a distribution the picture shows. */
    private static final double MOST = 0.995;

    WorkView {
        spark = List.copyOf(spark);
    }

    /** The elements of one list; {@code written} is that list in the file. */
    static List<WorkView> all(List<WorkElement> elements, Raw.Sequence written) {
        return IntStream.range(0, elements.size())
                .mapToObj(i -> of(elements.get(i), written.items().get(i)))
                .toList();
    }

    private static WorkView of(WorkElement element, Raw written) {
        Distribution distribution = element.time().drawn();
        String text =
                written instanceof Raw.Mapping mapping && mapping.entries().size() == 1
                        ? FlowText.of(mapping.entries().get(0).value())
                        : FlowText.of(written);
        String words = distribution.isConstant()
                ? "always " + time(distribution.mean())
                : "half within " + time(distribution.quantile(0.5)) + ", 95 % within "
                        + time(distribution.quantile(0.95));
        return new WorkView(element.name(), text, distribution.mean(), density(distribution), words);
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
