package runthrough.study;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import runthrough.simulation.records.ProcessedScrap;
import runthrough.simulation.records.Totals;
import runthrough.study.statistics.EventPart;
import runthrough.study.statistics.SplitValues;

/**
 * Figures of replications with the parts of them that stops make, by kind: coil changes that did not run through, process
 * downtime, joint breaks. Where stops are few, the interval of a figure stands on their number.
 *
 * <p>Rule REPORT-17.
 */
final class StopParts {
    private final List<Totals> totals;
    private final UnseenStops unseen;

    StopParts(List<Totals> totals, UnseenStops unseen) {
        this.totals = totals;
        this.unseen = unseen;
    }

    /**
     * A figure that stops lower in the proportion of the strip that they keep from being processed, and that is scrapped.
     *
     * @param value of a replication
     * @param perMetre value of a metre more or less in it
     * @param scrapToo whether strip scrapped at stops lowers it, too
     */
    SplitValues lowered(ToDoubleFunction<Totals> value, ToDoubleFunction<Totals> perMetre, boolean scrapToo) {
        double scrap = scrapToo ? 1 : 0;
        return split(
                value,
                one -> -perMetre.applyAsDouble(one) * (one.lostMetres() + scrap * scrapOf(one, one.starvedStops())),
                one -> -perMetre.applyAsDouble(one)
                        * (one.downtimeSeconds() * one.meanRatedSpeed() + scrap * scrapOf(one, one.downtimes())),
                one -> -perMetre.applyAsDouble(one)
                        * (one.breakLostMetres()
                                + scrap
                                        * (scrapOf(one, one.jointBreaks())
                                                + one.processedScrap().breakMetres())),
                -mean(one -> perMetre.applyAsDouble(one)
                        * (one.meanRatedSpeed() * one.duration() + scrap * unseen.scrapPerStop() * one.changes())
                        / one.changes()),
                -mean(one -> perMetre.applyAsDouble(one)
                        * (one.meanRatedSpeed() * unseen.downtime()
                                + (unseen.downtime() > 0 ? scrap : 0) * unseen.scrapPerStop())),
                -mean(one -> perMetre.applyAsDouble(one)
                        * (one.meanRatedSpeed() * unseen.repair() + scrap * unseen.breakScrap())));
    }

    /**
     * A figure that the strip scrapped at stops raises.
     *
     * @param value of a replication
     * @param perMetre value of a metre of such scrap in it
     */
    SplitValues scrapped(ToDoubleFunction<Totals> value, ToDoubleFunction<Totals> perMetre) {
        return split(
                value,
                one -> perMetre.applyAsDouble(one) * scrapOf(one, one.starvedStops()),
                one -> perMetre.applyAsDouble(one) * scrapOf(one, one.downtimes()),
                one -> perMetre.applyAsDouble(one)
                        * (scrapOf(one, one.jointBreaks())
                                + one.processedScrap().breakMetres()),
                unseen.scrapPerStop() * mean(perMetre),
                unseen.downtime() > 0 ? unseen.scrapPerStop() * mean(perMetre) : 0,
                unseen.breakScrap() * mean(perMetre));
    }

    /** What is lost while starved or slowed; {@code ofOne} coil change, where none lost anything. */
    SplitValues lost(ToDoubleFunction<Totals> value, double ofOne) {
        return new SplitValues(each(value), List.of(failed(each(value), ofOne)));
    }

    private SplitValues split(
            ToDoubleFunction<Totals> value,
            ToDoubleFunction<Totals> byFailing,
            ToDoubleFunction<Totals> byDowntime,
            ToDoubleFunction<Totals> byBreaks,
            double failing,
            double downtime,
            double breaking) {
        return new SplitValues(
                each(value),
                List.of(
                        failed(each(byFailing), failing),
                        EventPart.ofTime(counts(Totals::downtimes), each(Totals::duration), each(byDowntime), downtime),
                        EventPart.ofTrials(
                                counts(Totals::jointBreaks), counts(Totals::changes), each(byBreaks), breaking)));
    }

    private EventPart failed(double[] effects, double ofOne) {
        return EventPart.ofTrials(
                counts(one -> one.changes() - one.ranThrough()), counts(Totals::changes), effects, ofOne);
    }

    /** What is scrapped where the process comes to rest (m), for {@code stops} of all its stops. */
    private static double scrapOf(Totals one, int stops) {
        ProcessedScrap scrap = one.processedScrap();
        int all = one.starvedStops() + one.downtimes() + one.jointBreaks();
        return all == 0 ? 0 : scrap.stopMetres() * stops / all;
    }

    /** The mean over replications that completed a coil change. */
    private double mean(ToDoubleFunction<Totals> value) {
        return totals.stream()
                .filter(one -> one.changes() > 0)
                .mapToDouble(value)
                .average()
                .orElse(0);
    }

    private double[] each(ToDoubleFunction<Totals> value) {
        return totals.stream().mapToDouble(value).toArray();
    }

    private long[] counts(ToLongFunction<Totals> count) {
        return totals.stream().mapToLong(count).toArray();
    }
}
