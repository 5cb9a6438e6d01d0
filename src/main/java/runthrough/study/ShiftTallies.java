package runthrough.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.Shifts.Shift;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;

/**
 * What came of the coil changes by the shift in which T0 lies, replication by replication.
 *
 * <p>Rule CREW-17.
 */
final class ShiftTallies {
    private final List<Shift> shifts;
    /** Of each shift one for each replication. */
    private final List<List<Tally>> tallies;

    ShiftTallies(Line line) {
        shifts = line.change().shifts().map(given -> given.list()).orElse(List.of());
        tallies = shifts.stream().<List<Tally>>map(shift -> new ArrayList<>()).toList();
    }

    /** What a shift had in one replication; times in seconds. */
    private static final class Tally {
        final double paidTime;
        long changes;
        long slowed;
        long stopped;
        double jointCycleTime;
        double waitingForPreparation;
        double waitingForPeople;
        double lostTime;

        Tally(double paidTime) {
            this.paidTime = paidTime;
        }

        void add(ChangeRecord change) {
            changes++;
            slowed += change.outcome() == Outcome.SLOWED ? 1 : 0;
            stopped += change.outcome() == Outcome.STOPPED ? 1 : 0;
            jointCycleTime += change.jointCycleTime();
            waitingForPreparation += change.waitingForPreparation();
            waitingForPeople += change.waitingForPeople();
            lostTime += change.lostTime();
        }

        long ranThrough() {
            return changes - slowed - stopped;
        }
    }

    void add(Replication replication) {
        if (shifts.isEmpty()) {
            return;
        }
        List<Tally> here = replication.totals().paidSecondsByShift().stream()
                .map(Tally::new)
                .toList();
        replication.changes().forEach(change -> here.get(change.shift()).add(change));
        IntStream.range(0, shifts.size()).forEach(shift -> tallies.get(shift).add(here.get(shift)));
    }

    /** Shift by shift, in the order of the description; empty without shifts. */
    List<ShiftOutcome> outcomes() {
        return IntStream.range(0, shifts.size())
                .mapToObj(shift -> outcome(shifts.get(shift).name(), tallies.get(shift)))
                .toList();
    }

    private static ShiftOutcome outcome(String name, List<Tally> replications) {
        List<Tally> any = replications.stream().filter(one -> one.changes > 0).toList();
        return new ShiftOutcome(
                name,
                new Verdict.Changes(
                        sum(replications, one -> one.changes),
                        sum(replications, Tally::ranThrough),
                        sum(replications, one -> one.slowed),
                        sum(replications, one -> one.stopped)),
                any.isEmpty() ? Optional.empty() : Optional.of(means(any)),
                replications.stream().mapToDouble(one -> one.lostTime).sum(),
                replications.stream().mapToDouble(one -> one.paidTime).sum());
    }

    private static ShiftOutcome.Means means(List<Tally> replications) {
        return new ShiftOutcome.Means(
                Estimators.share(
                        replications.stream().mapToLong(Tally::ranThrough).toArray(),
                        replications.stream().mapToLong(one -> one.changes).toArray()),
                mean(replications, one -> one.jointCycleTime),
                mean(replications, one -> one.waitingForPreparation),
                mean(replications, one -> one.waitingForPeople));
    }

    private static Estimate mean(List<Tally> replications, ToDoubleFunction<Tally> sum) {
        return Estimators.amount(replications.stream()
                .mapToDouble(one -> sum.applyAsDouble(one) / one.changes)
                .toArray());
    }

    private static long sum(List<Tally> replications, ToLongFunction<Tally> count) {
        return replications.stream().mapToLong(count).sum();
    }
}
