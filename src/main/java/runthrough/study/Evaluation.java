package runthrough.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import runthrough.simulation.Totals;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;

/**
 * What one variant of a line gave, replication by replication. Variants run under the same seed see the same luck, so that
 * replication i of one may be held against replication i of the other.
 *
 * @param chance whether anything in the line is left to chance; if not, one replication says all
 * @param replications in order of their index, at least one
 */
public record Evaluation(boolean chance, List<Tally> replications) {

    public Evaluation {
        replications = List.copyOf(replications);
    }

    /**
     * One replication.
     *
     * @param totals of it
     * @param causes what its coil changes that did not run through are laid to
     */
    public record Tally(Totals totals, Verdict.Causes causes) {}

    /** Coil changes of all replications. */
    public long changes() {
        return sum(Totals::changes);
    }

    /** How many of them ran through. */
    public long ranThrough() {
        return sum(Totals::ranThrough);
    }

    /** Share of coil changes run through. */
    public Estimate shareRunThrough() {
        return Estimators.share(counts(Totals::ranThrough), counts(Totals::changes));
    }

    /** Whether {@code target}, in (0, 1], is met. */
    public Answer answer(double target) {
        return test(target).answer();
    }

    /** How many coil changes would tell whether {@code target}, in (0, 1], is met. */
    public Verdict.Resolution resolution(double target) {
        return test(target).resolution();
    }

    private TargetTest test(double target) {
        return new TargetTest(target, shareRunThrough(), changes(), changes() - ranThrough(), chance);
    }

    /** What the coil changes that did not run through are laid to, in all replications. */
    public Verdict.Causes causes() {
        return new Verdict.Causes(
                causes(Cause.PRACTICE), causes(Cause.PREPARATION), causes(Cause.REFILL), causes(Cause.CAPACITY));
    }

    private long causes(Cause cause) {
        return replications.stream()
                .mapToLong(tally -> tally.causes().count(cause))
                .sum();
    }

    /** Only the first {@code number} replications, or all if there are no more. */
    public Evaluation first(int number) {
        return number >= replications.size() ? this : new Evaluation(chance, replications.subList(0, number));
    }

    /** The mean of one value of each replication. */
    public Estimate mean(ToDoubleFunction<Totals> value) {
        return Estimators.mean(each(value));
    }

    /**
     * The mean of how much greater a value is here than in {@code other}, replication by replication: under the same luck
     * this is known far better than the two values themselves.
     *
     * @param other has as many replications, under the same seed
     */
    public Estimate difference(Evaluation other, ToDoubleFunction<Totals> value) {
        double[] here = each(value);
        double[] there = other.each(value);
        if (here.length != there.length) {
            throw new IllegalArgumentException(here.length + " replications cannot be paired with " + there.length);
        }
        for (int i = 0; i < here.length; i++) {
            here[i] -= there[i];
        }
        return Estimators.mean(here);
    }

    /** One value of each replication. */
    double[] each(ToDoubleFunction<Totals> value) {
        return replications.stream()
                .mapToDouble(tally -> value.applyAsDouble(tally.totals()))
                .toArray();
    }

    private long[] counts(ToLongFunction<Totals> count) {
        return replications.stream()
                .mapToLong(tally -> count.applyAsLong(tally.totals()))
                .toArray();
    }

    private long sum(ToLongFunction<Totals> count) {
        return replications.stream()
                .mapToLong(tally -> count.applyAsLong(tally.totals()))
                .sum();
    }
}
