package runthrough.study;

import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.stream.LongStream;
import runthrough.plant.Brief;
import runthrough.simulation.Totals;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Pool;
import runthrough.study.statistics.Summary;

/** Draws the verdict from what the replications gave. */
final class VerdictMaker {
    private final Brief brief;
    private final Fold fold;
    private final TotalsEstimates estimates;

    VerdictMaker(Brief brief, Fold fold) {
        this.brief = brief;
        this.fold = fold;
        this.estimates = fold.estimates();
    }

    Verdict verdict() {
        Verdict.Changes changes = new Verdict.Changes(
                sum(Totals::changes), sum(Totals::ranThrough), sum(Totals::slowedChanges), sum(Totals::stoppedChanges));
        boolean chance = !brief.line().isDeterministic();
        double target = brief.run().target();
        Estimate share = shareOfChanges(estimates.counts(Totals::ranThrough));
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
                estimates.stoppages(),
                estimates.output(),
                joint(),
                oneStrip ? Optional.empty() : Optional.of(storage()));
    }

    private Verdict.Spare spare(double target) {
        double share = 1 - target;
        return new Verdict.Spare(
                fold.pools().spareMetres().percentile(share),
                fold.pools().spareSeconds().percentile(share),
                fold.pools().spareSpeed().percentile(share));
    }

    private Verdict.Joint joint() {
        return new Verdict.Joint(
                summary(fold.pools().jointTime()), summary(fold.pools().waiting()), shareOfChanges(fold.waited()));
    }

    private Verdict.Storage storage() {
        return new Verdict.Storage(
                summary(fold.pools().margin()),
                summary(fold.pools().stripDrawn()),
                fold.pools().refillTime().count() == 0
                        ? Optional.empty()
                        : Optional.of(summary(fold.pools().refillTime())),
                shareOfChanges(estimates.counts(Totals::refilledChanges)),
                Estimators.mean(estimates.each(Totals::meanLevel)),
                fold.totals().stream().mapToDouble(Totals::lowestLevel).min().orElseThrow(),
                fold.totals().stream().mapToDouble(Totals::overtravel).max().orElseThrow(),
                sum(Totals::overfull),
                sum(Totals::stripBreaks));
    }

    private Estimate shareOfChanges(long[] counts) {
        return Estimators.share(counts, estimates.counts(Totals::changes));
    }

    private long sum(ToLongFunction<Totals> count) {
        return LongStream.of(estimates.counts(count)).sum();
    }

    private static Summary summary(Pool pool) {
        return pool.sample().summary(pool.mean());
    }
}
