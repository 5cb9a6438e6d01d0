package runthrough.study.sensitivity;

import java.util.Arrays;
import java.util.List;
import runthrough.simulation.Replication;
import runthrough.study.cause.NamedCauses;
import runthrough.study.statistics.Sample;

/** What one replication showed. */
final class ReplicationValues {
    private final int ranThrough;
    private final double[] values;

    private final List<NamedCauses.Count> causes;

    private ReplicationValues(int ranThrough, double[] values, List<NamedCauses.Count> causes) {
        this.ranThrough = ranThrough;
        this.causes = causes;
        this.values = values;
    }

    /** How many of its coil changes ran through. */
    int ranThrough() {
        return ranThrough;
    }

    /** How many coil changes it has. */
    int changes() {
        return values.length;
    }

    static ReplicationValues of(Replication replication, MeasureReader gauge, ChangeMeasure measure) {
        return new ReplicationValues(replication.totals().ranThrough(), gauge.read(measure, replication), List.of());
    }

    /** The same with what its coil changes that did not run through are attributed to. */
    ReplicationValues with(List<NamedCauses.Count> found) {
        return new ReplicationValues(ranThrough, values, found);
    }

    /** What its coil changes that did not run through are attributed to, where that was asked. */
    List<NamedCauses.Count> causes() {
        return causes;
    }

    /** The share of its coil changes that ran through, in [0, 1]. */
    double share() {
        return (double) ranThrough / values.length;
    }

    double mean() {
        return Arrays.stream(values).sum() / values.length;
    }

    /** The value below which the share {@code p} of all values of {@code replications} lies. */
    static double quantile(List<ReplicationValues> replications, double p) {
        return Sample.of(replications.stream()
                        .flatMapToDouble(seen -> Arrays.stream(seen.values))
                        .toArray())
                .percentile(p);
    }
}
