package runthrough.study;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import runthrough.plant.Brief;
import runthrough.simulation.Totals;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Pool;
import runthrough.study.statistics.Summary;

/** Draws the verdict from what the replications gave. */
final class VerdictMaker {
    /** A shift (s). */
    private static final double SHIFT = 8 * 3600.0;

    private final Brief brief;
    private final Fold fold;

    VerdictMaker(Brief brief, Fold fold) {
        this.brief = brief;
        this.fold = fold;
    }

    Verdict verdict() {
        Verdict.Changes changes = new Verdict.Changes(
                sum(Totals::changes), sum(Totals::ranThrough), sum(Totals::slowedChanges), sum(Totals::stoppedChanges));
        boolean chance = !brief.line().isDeterministic();
        double target = brief.run().target();
        Estimate share = shareOfChanges(fold.counts(Totals::ranThrough));
        TargetTest test = new TargetTest(target, share, changes.total(), changes.failed(), chance);
        boolean oneStrip = brief.line().practice().isOneStrip();
        return new Verdict(
                test.answer(),
                target,
                chance,
                share,
                test.resolution(),
                changes,
                fold.causes(),
                oneStrip ? Optional.empty() : Optional.of(spare(target)),
                stoppages(),
                output(),
                joint(),
                oneStrip ? Optional.empty() : Optional.of(storage()));
    }

    private Verdict.Spare spare(double target) {
        double share = 1 - target;
        return new Verdict.Spare(
                fold.spareMetres().percentile(share),
                fold.spareSeconds().percentile(share),
                fold.spareSpeed().percentile(share));
    }

    private Verdict.Stoppages stoppages() {
        double[] shifts = fold.each(totals -> totals.duration() / SHIFT);
        return new Verdict.Stoppages(
                stopsPerHundredChanges(),
                Estimators.rate(fold.counts(Totals::starvedStops), shifts),
                Estimators.rate(fold.counts(Totals::slowings), shifts),
                Estimators.rate(fold.counts(Totals::ownStops), shifts),
                perShift(Totals::lostMetres),
                perShift(Totals::lostTime));
    }

    /** Replications without a coil change are left out. */
    private Estimate stopsPerHundredChanges() {
        long[] changes = fold.counts(Totals::changes);
        long[] stops = fold.stops();
        int[] counting =
                IntStream.range(0, changes.length).filter(i -> changes[i] > 0).toArray();
        return Estimators.rate(
                IntStream.of(counting).mapToLong(i -> stops[i]).toArray(),
                IntStream.of(counting).mapToDouble(i -> changes[i] / 100.0).toArray());
    }

    private Verdict.Output output() {
        return new Verdict.Output(
                Estimators.amount(fold.each(totals -> totals.processedMetres() / totals.duration())),
                Estimators.amount(fold.each(totals -> totals.processedKilograms() / totals.duration())),
                Estimators.amount(fold.each(Totals::utilisation)),
                perShift(Totals::scrapMetres),
                perShift(Totals::scrapKilograms),
                Estimators.amount(fold.each(Totals::scrapShare)),
                perShift(Totals::changes),
                Estimators.amount(fold.each(Totals::duration)));
    }

    private Verdict.Joint joint() {
        return new Verdict.Joint(summary(fold.jointTime()), summary(fold.waiting()), shareOfChanges(fold.waited()));
    }

    private Verdict.Storage storage() {
        return new Verdict.Storage(
                summary(fold.margin()),
                summary(fold.stripDrawn()),
                fold.refillTime().count() == 0 ? Optional.empty() : Optional.of(summary(fold.refillTime())),
                shareOfChanges(fold.counts(Totals::refilledChanges)),
                Estimators.mean(fold.each(Totals::meanLevel)),
                fold.totals().stream().mapToDouble(Totals::lowestLevel).min().orElseThrow(),
                fold.totals().stream().mapToDouble(Totals::overtravel).max().orElseThrow(),
                sum(Totals::overfull),
                sum(Totals::stripBreaks));
    }

    private Estimate shareOfChanges(long[] counts) {
        return Estimators.share(counts, fold.counts(Totals::changes));
    }

    private Estimate perShift(ToDoubleFunction<Totals> value) {
        return Estimators.amount(fold.each(totals -> value.applyAsDouble(totals) / totals.duration() * SHIFT));
    }

    private long sum(ToLongFunction<Totals> count) {
        return LongStream.of(fold.counts(count)).sum();
    }

    private static Summary summary(Pool pool) {
        return pool.sample().summary(pool.mean());
    }
}
