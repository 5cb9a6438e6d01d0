package runthrough.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;

/** Independent replications of a line, for comparison with exact stochastic results; each published case has its own seed. */
final class Sampled {
    private static final int REPLICATIONS = 20;

    private Sampled() {}

    /** Runs 20 replications, the first tenth of the coil changes left out, and keeps what {@code measure} makes of each. */
    static List<double[]> replications(LineBuilder line, String id, int changes, Detail detail, Measure measure) {
        Line built = line.build();
        RunPlan plan = new RunPlan(new Extent.Changes(changes), changes / 10, REPLICATIONS, id.hashCode(), 0.99);
        return IntStream.range(0, REPLICATIONS)
                .parallel()
                .mapToObj(index -> measure.of(new LineSimulator(built, plan).run(index, detail)))
                .toList();
    }

    /** Totals of 20 replications. */
    static List<Totals> totals(LineBuilder line, String id, int changes) {
        Line built = line.build();
        RunPlan plan = new RunPlan(new Extent.Changes(changes), changes / 10, REPLICATIONS, id.hashCode(), 0.99);
        return IntStream.range(0, REPLICATIONS)
                .parallel()
                .mapToObj(index -> new LineSimulator(built, plan)
                        .run(index, Detail.CHANGES)
                        .totals())
                .toList();
    }

    /** Several numbers of one replication. */
    interface Measure {
        double[] of(Replication run);
    }

    static void assertMean(String what, List<double[]> replications, int number, double exact, double relative) {
        assertMean(
                what,
                replications.stream().mapToDouble(values -> values[number]).toArray(),
                exact,
                relative);
    }

    static void assertMean(
            String what, List<Totals> totals, ToDoubleFunction<Totals> number, double exact, double relative) {
        assertMean(what, totals.stream().mapToDouble(number).toArray(), exact, relative);
    }

    /** The mean must lie within three standard errors of the exact value, or within {@code relative} of it. */
    private static void assertMean(String what, double[] values, double exact, double relative) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double squares = Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        double error = Math.sqrt(squares / (values.length - 1) / values.length);
        assertThat(mean)
                .as("%s, standard error %s", what, error)
                .isCloseTo(exact, within(Math.max(3 * error, relative * exact)));
    }
}
