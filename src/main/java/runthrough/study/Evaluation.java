package runthrough.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import runthrough.plant.Line;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Totals;
import runthrough.study.cause.CauseCounts;
import runthrough.study.cause.NamedCauses;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Pairs;
import runthrough.study.statistics.Successes;

/**
 * What one variant of a line gave, replication by replication. Variants run under the same seed see the same random numbers, so that
 * replication i of one may be held against replication i of the other.
 *
 * @param chance whether anything in the line is random; if not, one replication says all
 * @param unseen what one stop costs of which none was seen
 * @param replications in order of their index
 */
public record Evaluation(boolean chance, UnseenStops unseen, List<Tally> replications) {

    public Evaluation {
        replications = List.copyOf(replications);
    }

    /**
     * One replication.
     *
     * @param totals of it
     * @param causes what its coil changes that did not run through are attributed to; empty where nobody asked
     */
    public record Tally(Totals totals, Optional<List<NamedCauses.Count>> causes) {

        public Tally {
            causes = causes.map(List::copyOf);
        }

        /** What {@code replication} adds up to, without causes. */
        public static Tally of(Replication replication) {
            return new Tally(replication.totals(), Optional.empty());
        }
    }

    /** Replication {@code index}, if there are as many. */
    public Optional<Tally> replication(int index) {
        return index < replications.size() ? Optional.of(replications.get(index)) : Optional.empty();
    }

    /** No replication of {@code line} yet. */
    public static Evaluation none(Line line) {
        return new Evaluation(!line.isDeterministic(), UnseenStops.of(line), List.of());
    }

    /** Coil changes of all replications. */
    public long changes() {
        return sum(Totals::changes);
    }

    /** How many of them ran through. */
    public long ranThrough() {
        return sum(Totals::ranThrough);
    }

    /** How many of them went without a stop, running through or slowed. */
    public long withoutStop() {
        return sum(totals -> totals.changes() - totals.stoppedChanges());
    }

    /** How many coil changes were refilled before the next. */
    public long refilled() {
        return sum(Totals::refilledChanges);
    }

    /** Share of coil changes without a stop. */
    public Estimate shareWithoutStop() {
        return estimates().shareWithoutStop();
    }

    /** What starved stops cost (s) of {@code time} (s) that the line is to run. */
    public Estimate lostTime(double time) {
        return estimates().lostTimePerShift().times(time / TotalsEstimates.SHIFT);
    }

    /** Whether {@code goal} is reached. */
    public TargetStatus answer(Goal goal) {
        return new TargetTest(goal.target(), goal.share(this), changes(), changes() - goal.reached(this), chance)
                .answer();
    }

    /** Share of coil changes run through. */
    public Estimate shareRunThrough() {
        return estimates().shareRunThrough();
    }

    /** Whether {@code target}, in (0, 1], is met. */
    public TargetStatus answer(double target) {
        return test(target).answer();
    }

    /** How many coil changes would tell whether {@code target}, in (0, 1], is met. */
    public Verdict.Resolution resolution(double target) {
        return test(target).resolution();
    }

    private TargetTest test(double target) {
        return new TargetTest(target, shareRunThrough(), changes(), changes() - ranThrough(), chance);
    }

    /**
     * What the coil changes that did not run through are attributed to, in all replications.
     *
     * @throws IllegalStateException if it was made without causes, see {@link Evaluator#findingCauses}
     */
    public CauseCounts causes() {
        return named().byCause();
    }

    /** The same by named work element, as {@link NamedCauses#list}. */
    public List<NamedCauses.Count> namedCauses() {
        return named().list();
    }

    /** Those of the verdict over {@code replicationsRun}, which runs all of them also where one shows all. */
    public List<NamedCauses.Count> namedCauses(int replicationsRun) {
        NamedCauses all = new NamedCauses();
        IntStream.range(0, replicationsRun / replications.size()).forEach(i -> all.add(namedCauses()));
        return all.list();
    }

    private NamedCauses named() {
        NamedCauses named = new NamedCauses();
        replications.forEach(
                one -> named.add(one.causes().orElseThrow(() -> new IllegalStateException("nobody asked for causes"))));
        return named;
    }

    /** Only the first {@code number} replications, or all if there are no more. */
    public Evaluation first(int number) {
        return number >= replications.size() ? this : new Evaluation(chance, unseen, replications.subList(0, number));
    }

    /** Starved stops, and what they cost. */
    public Verdict.Stoppages stoppages() {
        return estimates().stoppages();
    }

    /** What comes out, and what is lost as scrap. */
    public Verdict.Output output() {
        return estimates().output();
    }

    /** The mean of one value of each replication, which may be negative. */
    public Estimate mean(ToDoubleFunction<Totals> value) {
        return Estimators.mean(estimates().each(value));
    }

    /** The mean of one value of each replication that cannot be negative; where it is NaN the replication is left out. */
    public Estimate amount(ToDoubleFunction<Totals> value) {
        return Estimators.amount(
                DoubleStream.of(each(value)).filter(one -> !Double.isNaN(one)).toArray());
    }

    /** One value of each replication. */
    public double[] each(ToDoubleFunction<Totals> value) {
        return estimates().each(value);
    }

    /** Coil changes of each replication, and how many of them ran through. */
    public Successes successes() {
        return new Successes(estimates().counts(Totals::ranThrough), estimates().counts(Totals::changes), !chance);
    }

    /**
     * By how much more comes out (good output, m/s) than of {@code other}, replication by replication: under the same random
     * numbers this is known far better than the two values themselves.
     *
     * @param other has as many replications, run under the same seed
     */
    public Estimate speedOver(Evaluation other) {
        if (replications.size() != other.replications.size()) {
            throw new IllegalArgumentException(
                    replications.size() + " replications cannot be paired with " + other.replications.size());
        }
        double[] more = each(Totals::goodSpeed);
        double[] there = other.each(Totals::goodSpeed);
        Arrays.setAll(more, i -> more[i] - there[i]);
        Estimate mean = Estimators.mean(more);
        return chance || other.chance
                ? new Estimate(
                        mean.mean(),
                        mean.replications(),
                        mean.sd(),
                        Pairs.of(1)
                                .means(estimates().speed(), other.estimates().speed())
                                .interval())
                : mean;
    }

    /** What the totals of its replications give. */
    public TotalsEstimates estimates() {
        return new TotalsEstimates(replications.stream().map(Tally::totals).toList(), unseen);
    }

    private long sum(ToLongFunction<Totals> count) {
        return LongStream.of(estimates().counts(count)).sum();
    }
}
