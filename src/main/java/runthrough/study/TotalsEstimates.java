package runthrough.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import runthrough.simulation.records.Totals;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;

/**
 * What the totals of independent replications tell: stops and output, as means over replications. A shift is 8 h.
 *
 * <p>Rules REPORT-8, REPORT-9, REPORT-14.
 */
final class TotalsEstimates {
    /** A shift (s). */
    private static final double SHIFT = 8 * 3600.0;

    private final List<Totals> totals;
    private final long[] stopsOfChanges;

    /**
     * Estimates from {@code totals}.
     *
     * @param stopsOfChanges how many starved stops belong to the coil changes that count, of each replication
     */
    TotalsEstimates(List<Totals> totals, long[] stopsOfChanges) {
        this.totals = totals;
        this.stopsOfChanges = stopsOfChanges;
    }

    /** One value of each replication. */
    double[] each(ToDoubleFunction<Totals> value) {
        return totals.stream().mapToDouble(value).toArray();
    }

    /** One count of each replication. */
    long[] counts(ToLongFunction<Totals> value) {
        return totals.stream().mapToLong(value).toArray();
    }

    /** Share of coil changes without a stop, run through or slowed; there must be any. */
    Estimate shareWithoutStop() {
        return Estimators.share(counts(one -> one.changes() - one.stoppedChanges()), counts(Totals::changes));
    }

    /** Share of coil changes run through; there must be any. */
    Estimate shareRunThrough() {
        return Estimators.share(counts(Totals::ranThrough), counts(Totals::changes));
    }

    Verdict.Stoppages stoppages() {
        double[] shifts = each(one -> one.duration() / SHIFT);
        return new Verdict.Stoppages(
                stopsPerHundredChanges(),
                Estimators.rate(counts(Totals::starvedStops), shifts),
                Estimators.rate(counts(Totals::slowings), shifts),
                Estimators.rate(counts(Totals::downtimes), shifts),
                perShift(Totals::lostMetres),
                perShift(Totals::lostTime));
    }

    /** Replications without a coil change are left out. */
    private Estimate stopsPerHundredChanges() {
        long[] changes = counts(Totals::changes);
        int[] counting =
                IntStream.range(0, changes.length).filter(i -> changes[i] > 0).toArray();
        return Estimators.rate(
                IntStream.of(counting).mapToLong(i -> stopsOfChanges[i]).toArray(),
                IntStream.of(counting).mapToDouble(i -> changes[i] / 100.0).toArray());
    }

    /** What joints that pass the process at less than its speed cost. */
    Verdict.Passages passages() {
        return new Verdict.Passages(
                perShift(Totals::passageLostMetres),
                Estimators.amount(each(one -> one.passageLostMetres() / one.ratedMetres())));
    }

    /** What joints that break in the process cost. */
    Verdict.Breaks breaks() {
        return new Verdict.Breaks(
                Estimators.rate(counts(Totals::jointBreaks), each(one -> one.duration() / SHIFT)),
                perShift(Totals::breakLostMetres),
                perShift(Totals::breakLostTime),
                perShift(Totals::breakSeconds));
    }

    Verdict.Output output() {
        return new Verdict.Output(
                Estimators.amount(each(Totals::goodSpeed)),
                Estimators.amount(each(Totals::goodMassFlow)),
                Estimators.amount(each(one -> one.processedMetres() / one.duration())),
                Estimators.amount(each(one -> one.processedKilograms() / one.duration())),
                Estimators.amount(each(Totals::utilisation)),
                perShift(Totals::scrapMetres),
                perShift(Totals::scrapKilograms),
                Estimators.amount(each(Totals::scrapShare)),
                perShift(Totals::changes),
                Estimators.amount(each(Totals::duration)),
                perShift(Totals::paidSeconds));
    }

    private Estimate perShift(ToDoubleFunction<Totals> value) {
        return Estimators.amount(each(one -> value.applyAsDouble(one) / one.duration() * SHIFT));
    }
}
