package runthrough.study.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.study.Evaluation.Tally;
import runthrough.study.Evaluator;
import runthrough.study.StudyException;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Sample;

/**
 * What capacity each coil change would have needed, seen in an accumulator that never runs empty: how far below full the
 * level fell, and the level at which the process slows or stops.
 *
 * <p>While the process holds its speed, nothing in a line depends on how far the level is from empty, only on how far it is
 * from full. So up to the first coil change that does not run through, a smaller accumulator behaves as this one does. After
 * it the two part for a while: these needs are a good guess at the share that runs through with a given capacity, and the
 * truth about replications in which every coil change runs through. Where a joint slows or stops the process as it passes, or coils
 * have speeds of their own, they are a guess throughout: when a joint or a coil comes to the process depends on how much strip lies before it.
 */
final class StripDemand {
    /** A capacity more than a need by this part of it is no matter of rounding. */
    private static final double ROUNDING = 1e-6;

    private final Line ample;
    private final double ampleCapacity;
    private final double slowLevel;
    private final List<Needs> byReplication = new ArrayList<>();
    private Sample sorted = Sample.of();

    /**
     * One replication.
     *
     * @param sorted its needs (m), smallest first
     * @param most a capacity (m) with which it would be the same as here, but for the level; infinite when that is not known
     * @param tally what it adds up to
     */
    private record Needs(Sample sorted, double most, Tally tally) {}

    /** Needs of a line whose accumulator holds more than is ever drawn. */
    StripDemand(Line ample) {
        this.ample = ample;
        this.ampleCapacity = ample.accumulator().capacity();
        this.slowLevel =
                ample.process().slowing().map(ProcessSection.Slowing::level).orElse(0.0);
    }

    /** Adds the needs of the replications of {@code plan} that are lacking. */
    void extend(Evaluator evaluator, RunPlan plan) {
        int[] lacking = IntStream.range(byReplication.size(), Evaluator.replications(ample, plan))
                .toArray();
        byReplication.addAll(
                evaluator.observe(ample, plan, lacking, replication -> needs(replication, plan.leaveOut() > 0)));
        sorted = Sample.of(byReplication.stream()
                .flatMapToDouble(needs -> Arrays.stream(needs.sorted().values()))
                .toArray());
        if (sorted.isEmpty()) {
            throw new StudyException("no coil change was completed in any of " + byReplication.size()
                    + " replications; give a longer run, or fewer coil changes to leave out");
        }
    }

    private Needs needs(Replication replication, boolean hasUnseen) {
        double[] needs = replication.changes().stream().mapToDouble(this::need).toArray();
        double hold = Math.max(ample.stopLevel(ample.fastestRatedSpeed()), slowLevel);
        double most = ampleCapacity - replication.totals().lowestLevel() + hold;
        return new Needs(Sample.of(needs), hasUnseen ? Double.POSITIVE_INFINITY : most, Tally.of(replication));
    }

    private double need(ChangeRecord change) {
        double drawn = ampleCapacity - change.lowestLevel();
        return drawn + Math.max(change.stopLevel(), slowLevel);
    }

    /**
     * What replication {@code index} gives with {@code capacity} (m), if every coil change of it is sure to run through: the
     * same as here, but for the level.
     */
    Optional<Tally> known(int index, double capacity) {
        if (!ample.isSameAtAnyCapacity() || index >= byReplication.size()) {
            return Optional.empty();
        }
        Needs needs = byReplication.get(index);
        return capacity > needs.most() * (1 + ROUNDING)
                ? Optional.of(
                        new Tally(needs.tally().totals().withLevelLower(ampleCapacity - capacity), Optional.empty()))
                : Optional.empty();
    }

    /** The need (m) that the share {@code p}, in [0, 1], of coil changes does not exceed. */
    double quantile(double p) {
        return sorted.percentile(p);
    }

    /** Whether {@code target} would be shown to be met if every coil change ran through. */
    boolean canBeSure(double target) {
        return interval(sorted.count() - 1).low() >= target;
    }

    /** The smallest capacity (m) at which the share that would run through is at least {@code target}. */
    double forSeen(double target) {
        return smallest(index -> (double) (index + 1) / sorted.count() >= target);
    }

    /** The smallest capacity (m) at which this is shown, or the largest need when none is. */
    double forSure(double target) {
        return smallest(index -> interval(index).low() >= target);
    }

    /** The smallest capacity (m) at which it is not shown to be less. */
    double forPossible(double target) {
        return smallest(index -> interval(index).high() >= target);
    }

    /** The interval of the share that would run through with as much capacity as the need at {@code index}. */
    private Interval interval(int index) {
        long[] through = byReplication.stream()
                .mapToLong(needs -> countUpTo(needs.sorted(), sorted.get(index)))
                .toArray();
        long[] changes = byReplication.stream()
                .mapToLong(needs -> needs.sorted().count())
                .toArray();
        return Estimators.share(through, changes).interval().orElseThrow();
    }

    /** How many of {@code values} are at most {@code limit}. */
    private static int countUpTo(Sample values, double limit) {
        int from = 0;
        int to = values.count();
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (values.get(middle) <= limit) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    /** The need at the lowest index that does, or the largest. */
    private double smallest(IntPredicate does) {
        int low = 0;
        int high = sorted.count() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (does.test(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return sorted.get(low);
    }
}
