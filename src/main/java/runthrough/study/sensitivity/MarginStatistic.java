package runthrough.study.sensitivity;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Interval;

/**
 * By what the margin of a run is measured: its mean, or the margin at the target, which all but the allowed share of coil
 * changes have. A quantile has no mean over replications; its interval comes from sections, the replications in groups, by
 * Student's t about the value of all (S. Asmussen and P. W. Glynn, "Stochastic Simulation", 2007, section III.5b, from
 * memory).
 *
 * @param allowed the share of coil changes that may have less, in (0, 1); empty for the mean
 * @param sections how many groups, {@code >= 1}
 */
record MarginStatistic(OptionalDouble allowed, int sections) {
    /** Fewer coil changes beyond the quantile than these leave a section without a quantile worth its name. */
    private static final double EACH = 5;

    private static final int FEWEST = 5;
    private static final int MOST = 30;

    /** A mean over {@code replications}. */
    static MarginStatistic mean(int replications) {
        return new MarginStatistic(OptionalDouble.empty(), replications);
    }

    /**
     * The margin at {@code target}, in (0, 1], if {@code changes} coil changes in as many {@code replications} tell it; else
     * the mean. Where nothing is left to {@code chance} they do: the coil changes differ as they are known to.
     */
    static MarginStatistic atTarget(double target, long changes, int replications, boolean chance) {
        if (!chance) {
            return new MarginStatistic(OptionalDouble.of(1 - target), 1);
        }
        int sections = (int) Math.min(Math.min(MOST, replications), changes * (1 - target) / EACH);
        return sections >= FEWEST ? new MarginStatistic(OptionalDouble.of(1 - target), sections) : mean(replications);
    }

    /** By how much {@code there} is more than {@code here}, replication by replication under the same random numbers. */
    Estimate difference(List<ReplicationValues> there, List<ReplicationValues> here) {
        if (allowed.isEmpty()) {
            return Estimators.mean(IntStream.range(0, here.size())
                    .mapToDouble(i -> there.get(i).mean() - here.get(i).mean())
                    .toArray());
        }
        double whole = quantile(there) - quantile(here);
        return about(
                whole,
                IntStream.range(0, sections)
                        .mapToDouble(s -> quantile(section(there, s)) - quantile(section(here, s)))
                        .toArray());
    }

    /** Its value. */
    Estimate value(List<ReplicationValues> seen) {
        if (allowed.isEmpty()) {
            return Estimators.mean(
                    seen.stream().mapToDouble(ReplicationValues::mean).toArray());
        }
        return about(
                quantile(seen),
                IntStream.range(0, sections)
                        .mapToDouble(s -> quantile(section(seen, s)))
                        .toArray());
    }

    private double quantile(List<ReplicationValues> seen) {
        return ReplicationValues.quantile(seen, allowed.orElseThrow());
    }

    private List<ReplicationValues> section(List<ReplicationValues> seen, int number) {
        int from = (int) ((long) number * seen.size() / sections);
        int to = (int) ((long) (number + 1) * seen.size() / sections);
        return seen.subList(from, to);
    }

    /** The value of all with the spread of the sections about their own mean. */
    private static Estimate about(double whole, double[] sections) {
        Estimate own = Estimators.mean(sections);
        Optional<Interval> moved = own.interval()
                .map(interval ->
                        new Interval(whole - interval.halfWidth(), whole + interval.halfWidth(), interval.method()));
        return new Estimate(whole, own.replications(), own.sd(), moved);
    }
}
