package runthrough.simulation.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import runthrough.checks.PublishedCheck;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.RunPlan.Extent;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.PlainLine;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Totals;

/**
 * Independent replications of a line, for comparison with exact stochastic results; each case has its own seed, made of its
 * name. The profile {@code thorough} asks for more replications, which narrows what three standard errors allow.
 *
 * <p>One after the other: the coverage agent has all threads write to the same few bytes, so that two take several times as
 * long as one.
 */
final class Sampled {
    private static final int REPLICATIONS = Integer.getInteger("sampled.replications", 20);

    private Sampled() {}

    /** Runs the replications, the first tenth of the coil changes left out, and keeps what {@code measure} makes of each. */
    static List<double[]> replications(PlainLine line, String id, int changes, Detail detail, Measure measure) {
        Line built = line.build();
        RunPlan plan = new RunPlan(new Extent.Changes(changes), changes / 10, REPLICATIONS, id.hashCode(), 0.99);
        return IntStream.range(0, REPLICATIONS)
                .mapToObj(index -> measure.of(LineSimulator.of(built, plan).run(index, detail)))
                .toList();
    }

    /** Totals of the replications. */
    static List<Totals> totals(PlainLine line, String id, int changes) {
        Line built = line.build();
        RunPlan plan = new RunPlan(new Extent.Changes(changes), changes / 10, REPLICATIONS, id.hashCode(), 0.99);
        return IntStream.range(0, REPLICATIONS)
                .mapToObj(index ->
                        LineSimulator.of(built, plan).run(index, Detail.CHANGES).totals())
                .toList();
    }

    /** Several numbers of one replication. */
    interface Measure {
        double[] of(Replication run);
    }

    /** The mean of one number over replications, and its standard error. */
    record Mean(double value, double error) {

        private static Mean of(double[] values) {
            double mean = Arrays.stream(values).average().orElseThrow();
            double squares = Arrays.stream(values)
                    .map(value -> (value - mean) * (value - mean))
                    .sum();
            return new Mean(mean, Math.sqrt(squares / (values.length - 1) / values.length));
        }

        static Mean of(List<double[]> replications, int number) {
            return of(
                    replications.stream().mapToDouble(values -> values[number]).toArray());
        }

        static Mean of(List<Totals> totals, ToDoubleFunction<Totals> number) {
            return of(totals.stream().mapToDouble(number).toArray());
        }

        /** It must lie within three standard errors of the exact value, or within {@code share} of it where that is more. */
        void agrees(PublishedCheck check, double share) {
            check.sampled(error, share).got(value);
        }

        /** That it was sampled long enough to say something: a standard error of at most {@code share} of the value. */
        Mean isKnownTo(double share) {
            assertThat(error).as("standard error").isLessThanOrEqualTo(share * value);
            return this;
        }
    }
}
