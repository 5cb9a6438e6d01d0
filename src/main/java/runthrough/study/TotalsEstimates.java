package runthrough.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import runthrough.simulation.records.Totals;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.SplitValues;

/**
 * What the totals of independent replications tell: stops and output, as means over replications. A shift is 8 h.
 *
 * <p>Rules REPORT-8, REPORT-9, REPORT-14.
 */
public final class TotalsEstimates {
    /** A shift (s). */
    /** A shift (s), for figures per shift: 8 h. */
    public static final double SHIFT = 8 * 3600.0;

    private final List<Totals> totals;
    private final StopParts parts;

    /**
     * Estimates from {@code totals}.
     *
     * @param unseen what one stop costs of which none was seen
     */
    TotalsEstimates(List<Totals> totals, UnseenStops unseen) {
        this.totals = totals;
        this.parts = new StopParts(totals, unseen);
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
                starvedStops().mean(0, Double.POSITIVE_INFINITY),
                Estimators.rate(counts(Totals::slowings), shifts),
                Estimators.rate(counts(Totals::downtimes), shifts),
                lostMetres().mean(0, SHIFT * fastest()),
                lostTimePerShift());
    }

    /** Replications without a coil change are left out. */
    private Estimate stopsPerHundredChanges() {
        long[] changes = counts(Totals::changes);
        long[] stops = counts(Totals::starvedStopsOfChanges);
        int[] counting =
                IntStream.range(0, changes.length).filter(i -> changes[i] > 0).toArray();
        return Estimators.rate(
                IntStream.of(counting).mapToLong(i -> stops[i]).toArray(),
                IntStream.of(counting).mapToDouble(i -> changes[i] / 100.0).toArray());
    }

    /** What joints that pass the process at less than its speed cost. */
    Verdict.Passages passages() {
        return new Verdict.Passages(
                amountPerShift(Totals::passageLostMetres),
                Estimators.amount(each(one -> one.passageLostMetres() / one.ratedMetres())));
    }

    /** What joints that break in the process cost. */
    Verdict.Breaks breaks() {
        return new Verdict.Breaks(
                Estimators.rate(counts(Totals::jointBreaks), each(one -> one.duration() / SHIFT)),
                amountPerShift(Totals::breakLostMetres),
                amountPerShift(Totals::breakLostTime),
                amountPerShift(Totals::breakSeconds));
    }

    Verdict.Output output() {
        return new Verdict.Output(
                speed().mean(0, fastest()),
                massFlow().mean(0, heaviest()),
                parts.lowered(one -> one.processedMetres() / one.duration(), one -> 1 / one.duration(), false)
                        .mean(0, fastest()),
                parts.lowered(
                                one -> one.processedKilograms() / one.duration(),
                                one -> mass(one) / one.duration(),
                                false)
                        .mean(0, heaviest()),
                utilisation().mean(0, 1),
                goodShare().mean(0, 1),
                parts.scrapped(one -> perShift(one, one.scrapMetres()), one -> perShift(one, 1))
                        .mean(0, Double.POSITIVE_INFINITY),
                scrapMass().mean(0, Double.POSITIVE_INFINITY),
                scrapShare().mean(0, 1),
                parts.lowered(
                                one -> perShift(one, one.changes()),
                                one -> perShift(one, one.changes()) / one.processedMetres(),
                                false)
                        .mean(0, Double.POSITIVE_INFINITY),
                Estimators.amount(each(Totals::duration)),
                amountPerShift(Totals::paidSeconds));
    }

    /** Starved stops per shift. */
    public SplitValues starvedStops() {
        return Estimators.rates(counts(Totals::starvedStops), each(one -> one.duration() / SHIFT));
    }

    /** Good output over time (m/s). */
    public SplitValues speed() {
        return parts.lowered(Totals::goodSpeed, one -> 1 / one.duration(), true);
    }

    /** The same by mass (kg/s). */
    public SplitValues massFlow() {
        return parts.lowered(Totals::goodMassFlow, one -> mass(one) / one.duration(), true);
    }

    /** Metres processed over metres at the rated speed. */
    public SplitValues utilisation() {
        return parts.lowered(Totals::utilisation, one -> 1 / one.ratedMetres(), false);
    }

    /** Good output over what was processed, by mass. */
    public SplitValues goodShare() {
        return parts.scrapped(Totals::goodShare, one -> -1 / one.processedMetres());
    }

    /** Metres not processed while starved, slowed or recovering from it, per shift (m). */
    public SplitValues lostMetres() {
        return parts.lost(one -> perShift(one, one.lostMetres()), SHIFT * ofOneChange(Totals::meanRatedSpeed));
    }

    /** What starved stops cost in a shift (s). */
    public Estimate lostTimePerShift() {
        return lostTime().mean(0, SHIFT);
    }

    /** The same at the rated speed, per shift (s). */
    public SplitValues lostTime() {
        return parts.lost(one -> perShift(one, one.lostTime()), SHIFT * ofOneChange(one -> 1));
    }

    /** Scrap by mass per shift (kg). */
    public SplitValues scrapMass() {
        return parts.scrapped(one -> perShift(one, one.scrapKilograms()), one -> perShift(one, mass(one)));
    }

    /** Scrap over scrap and good output, by mass. */
    public SplitValues scrapShare() {
        return parts.scrapped(Totals::scrapShare, one -> mass(one) / (one.scrapKilograms() + one.goodKilograms()));
    }

    /** One coil change's part of what a replication comes to. */
    private double ofOneChange(ToDoubleFunction<Totals> value) {
        return totals.stream()
                .filter(one -> one.changes() > 0)
                .mapToDouble(one -> value.applyAsDouble(one) / one.changes())
                .average()
                .orElse(0);
    }

    /** The rated speed (m/s), which no output exceeds; of coils with speeds of their own the largest mean of a replication. */
    private double fastest() {
        return totals.stream().mapToDouble(Totals::meanRatedSpeed).max().orElseThrow();
    }

    private double heaviest() {
        return totals.stream()
                .mapToDouble(one -> one.meanRatedSpeed() * mass(one))
                .max()
                .orElseThrow();
    }

    /** Of a metre processed (kg). */
    private static double mass(Totals one) {
        return one.processedMetres() > 0 ? one.processedKilograms() / one.processedMetres() : 0;
    }

    private Estimate amountPerShift(ToDoubleFunction<Totals> value) {
        return Estimators.amount(each(one -> perShift(one, value.applyAsDouble(one))));
    }

    private static double perShift(Totals one, double value) {
        return value / one.duration() * SHIFT;
    }
}
