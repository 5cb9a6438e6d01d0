package runthrough.study;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToLongFunction;
import java.util.stream.LongStream;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.records.Totals;
import runthrough.study.margin.StripMargin;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Pool;
import runthrough.study.statistics.Summary;

/** Draws the verdict from what the replications gave. */
final class VerdictMaker {
    private final SimulationRequest request;
    private final Aggregation aggregation;
    private final TotalsEstimates estimates;

    VerdictMaker(SimulationRequest request, Aggregation aggregation) {
        this.request = request;
        this.aggregation = aggregation;
        this.estimates = aggregation.estimates();
    }

    Verdict verdict() {
        Verdict.Changes changes = new Verdict.Changes(
                sum(Totals::changes), sum(Totals::ranThrough), sum(Totals::slowedChanges), sum(Totals::stoppedChanges));
        boolean chance = !request.line().isDeterministic();
        double target = request.run().target();
        Estimate share = shareOfChanges(estimates.counts(Totals::ranThrough));
        TargetTest test = new TargetTest(target, share, changes.total(), changes.failed(), chance);
        boolean oneStrip = request.line().practice().isOneStrip();
        return new Verdict(
                test.answer(),
                target,
                chance,
                share,
                test.resolution(),
                changes,
                aggregation.causes().byCause(),
                aggregation.causes().list(),
                oneStrip ? Optional.empty() : Optional.of(aggregation.pools().marginAt(1 - target)),
                withoutStop(chance, changes, oneStrip),
                estimates.stoppages(),
                request.line().process().jointPassage().map(any -> estimates.passages()),
                request.line().process().jointBreak().map(any -> estimates.breaks()),
                estimates.output(),
                joint(),
                oneStrip ? Optional.empty() : Optional.of(storage()),
                aggregation.shifts(request.run()));
    }

    private Optional<Verdict.WithoutStop> withoutStop(boolean chance, Verdict.Changes changes, boolean oneStrip) {
        OptionalDouble target = request.run().targetWithoutStop();
        boolean slows = !oneStrip && request.line().process().slowing().isPresent();
        if (!slows && target.isEmpty()) {
            return Optional.empty();
        }
        Estimate share = estimates.shareWithoutStop();
        double failures = 1 - target.orElse(request.run().target());
        Optional<Verdict.Spare> spare =
                oneStrip ? Optional.empty() : Optional.of(aggregation.pools().marginWithoutStopAt(failures));
        return Optional.of(new Verdict.WithoutStop(
                share,
                target,
                target.isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                new TargetTest(target.getAsDouble(), share, changes.total(), changes.stopped(), chance)
                                        .answer()),
                spare,
                spare.stream().allMatch(margin -> new StripMargin(request.line()).holdsWithoutStop(margin.speed()))));
    }

    private Verdict.Joint joint() {
        return new Verdict.Joint(
                amount(aggregation.pools().jointCycleTime()),
                waiting(aggregation.pools().waiting(), Waited::any),
                waiting(aggregation.pools().waitingForPreparation(), Waited::forPreparation),
                waiting(aggregation.pools().waitingForPeople(), Waited::forPeople));
    }

    private Verdict.Waiting waiting(Pool times, ToLongFunction<Waited> changes) {
        return new Verdict.Waiting(amount(times), shareOfChanges(aggregation.waited(changes)));
    }

    private Verdict.Storage storage() {
        return new Verdict.Storage(
                summary(aggregation.pools().marginToStopMetres()),
                request.line()
                        .process()
                        .slowing()
                        .map(any -> summary(aggregation.pools().marginMetres())),
                summaryOfAny(aggregation.pools().marginWithoutStopMetres()),
                summary(aggregation.pools().stripDrawn()),
                aggregation.pools().refillTime().count() == 0
                        ? Optional.empty()
                        : Optional.of(amount(aggregation.pools().refillTime())),
                shareOfChanges(estimates.counts(Totals::refilledChanges)),
                Estimators.amount(estimates.each(Totals::meanLevel)),
                aggregation.totals().stream()
                        .mapToDouble(Totals::lowestLevel)
                        .min()
                        .orElseThrow(),
                aggregation.totals().stream()
                        .mapToDouble(Totals::overtravel)
                        .max()
                        .orElseThrow(),
                sum(Totals::overfull),
                sum(Totals::stripBreaks));
    }

    private Estimate shareOfChanges(long[] counts) {
        return Estimators.share(counts, estimates.counts(Totals::changes));
    }

    private long sum(ToLongFunction<Totals> count) {
        return LongStream.of(estimates.counts(count)).sum();
    }

    /** Of what cannot be negative. */
    private static Summary amount(Pool pool) {
        return pool.summary().notNegative();
    }

    private static Optional<Summary> summaryOfAny(Pool pool) {
        return pool.count() == 0 ? Optional.empty() : Optional.of(summary(pool));
    }

    private static Summary summary(Pool pool) {
        return pool.summary();
    }
}
