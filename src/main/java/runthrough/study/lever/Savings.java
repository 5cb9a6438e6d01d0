package runthrough.study.lever;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import runthrough.simulation.records.Totals;
import runthrough.study.Evaluation;
import runthrough.study.Evaluation.Tally;
import runthrough.study.StudyResult;
import runthrough.study.TotalsEstimates;
import runthrough.study.UnseenStops;
import runthrough.study.cause.Reason;
import runthrough.study.statistics.Difference;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;
import runthrough.study.statistics.Interval;
import runthrough.study.statistics.Pairs;
import runthrough.study.statistics.SplitValues;

/**
 * What a line without a cause saves in a year, held against the line as it is, replication by replication.
 *
 * <p>An interval ends where what is possible ends: no more can be saved than there is, and that is known to the upper end of its
 * own interval; no more can be added than the coil changes, the time and the strip that are left. Where all pairs differ by
 * the same, an effect may still be there that none has shown: of three coil changes at most in all that were run (rule of three).
 *
 * <p>Rule WORTH-1.
 */
final class Savings {
    /** Of events of which none was seen, with 95 % confidence no more than so many were to be expected. */
    private static final double RULE_OF_THREE = 3;

    private final Evaluation with;
    private final double year;

    /** Held against the first {@code replications} of {@code result}. */
    Savings(StudyResult result, int replications) {
        this.with = new Evaluation(
                result.verdict().chance(),
                UnseenStops.of(result.request().line()),
                result.totals().stream()
                        .limit(replications)
                        .map(one -> new Tally(one, Optional.empty()))
                        .toList());
        this.year = result.request().run().yearlyTime();
    }

    /**
     * What is possible of a saving.
     *
     * @param least below zero: as much as may be added
     * @param most that can be saved
     * @param ofAllChanges what all coil changes of a year come to, each with its time and strip
     */
    private record Possible(double least, double most, double ofAllChanges) {

        /** {@code interval} of a saving of {@code mean} without what is not possible; empty where nothing is left of it. */
        Optional<Interval> cut(Interval interval, double mean) {
            double low = Math.max(interval.low(), Math.min(least, mean));
            double high = Math.min(interval.high(), Math.max(most, mean));
            return low < high ? Optional.of(new Interval(low, high, interval.method())) : Optional.empty();
        }
    }

    CauseWorth by(Reason reason, Evaluation without) {
        TotalsEstimates now = with.estimates();
        TotalsEstimates then = without.estimates();
        return new CauseWorth(
                reason,
                with.replications().size(),
                more(now.starvedStops(), then.starvedStops(), year / TotalsEstimates.SHIFT, without, stops()),
                share(without),
                more(now.lostTime(), then.lostTime(), year / TotalsEstimates.SHIFT, without, time()),
                more(then.speed(), now.speed(), year, without, strip()));
    }

    private Possible stops() {
        Estimate thereIs = with.estimates()
                .starvedStops()
                .times(year / TotalsEstimates.SHIFT)
                .mean(0, Double.POSITIVE_INFINITY);
        return new Possible(
                -yearly(one -> one.changes() - one.stoppedChanges()), high(thereIs), yearly(Totals::changes));
    }

    private Possible time() {
        return new Possible(-(year - yearly(Totals::lostTime)), high(with.lostTime(year)), year);
    }

    private Possible strip() {
        double rated = yearly(Totals::ratedMetres);
        Estimate good = with.estimates().speed().times(year).mean(0, rated);
        return new Possible(-good.mean(), rated - low(good), rated);
    }

    private Estimate share(Evaluation without) {
        Estimate there = with.shareRunThrough();
        return estimate(
                Pairs.of(1).shares(without.successes(), with.successes()),
                without.each(Totals::shareRunThrough),
                with.each(Totals::shareRunThrough),
                without,
                new Possible(-there.mean(), 1 - low(there), 1));
    }

    /** By how much {@code here} is more than {@code there}, both {@code factor} times, within what is {@code possible}. */
    private Estimate more(SplitValues here, SplitValues there, double factor, Evaluation without, Possible possible) {
        SplitValues one = ofAll(here).times(factor);
        SplitValues other = ofAll(there).times(factor);
        return estimate(Pairs.of(1).means(one, other), one.values(), other.values(), without, possible);
    }

    private Estimate estimate(
            Difference difference, double[] here, double[] there, Evaluation without, Possible possible) {
        Estimate plain = Estimators.mean(IntStream.range(0, with.replications().size())
                .mapToDouble(i -> here[place(here, i)] - there[place(there, i)])
                .filter(Double::isFinite)
                .toArray());
        double mean = plain.mean();
        boolean isKnown = difference.pairs() > 1 && (with.chance() || without.chance());
        double unseen = RULE_OF_THREE * possible.ofAllChanges() / with.changes();
        Interval wide = difference.interval().orElseGet(() -> around(mean, unseen));
        return new Estimate(
                mean,
                plain.replications(),
                plain.sd(),
                Optional.of(wide).filter(any -> isKnown).flatMap(any -> possible.cut(any, mean)));
    }

    private static Interval around(double mean, double half) {
        return new Interval(mean - half, mean + half, Interval.Method.FEW_EVENTS);
    }

    /** Of a line in which nothing is random one replication stands for all. */
    private SplitValues ofAll(SplitValues values) {
        int all = with.replications().size();
        return values.values().length == all ? values : values.at(new int[all]);
    }

    private static int place(double[] values, int replication) {
        return Math.min(replication, values.length - 1);
    }

    private double yearly(ToDoubleFunction<Totals> value) {
        return with.mean(one -> value.applyAsDouble(one) / one.duration()).mean() * year;
    }

    private static double low(Estimate estimate) {
        return estimate.interval().map(Interval::low).orElse(estimate.mean());
    }

    private static double high(Estimate estimate) {
        return estimate.interval().map(Interval::high).orElse(estimate.mean());
    }
}
