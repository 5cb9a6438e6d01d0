package runthrough.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.Shifts.Shift;
import runthrough.simulation.records.ChangeFacts;
import runthrough.simulation.records.Outcome;
import runthrough.study.margin.StripMargin;
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
    /** Of each shift one, for all replications. */
    private final List<ChangePools> pools;
    /** Whether a margin without a stop is another than the margin to run through. */
    private final boolean slows;

    ShiftTallies(Line line) {
        shifts = line.change().shifts().map(given -> given.list()).orElse(List.of());
        tallies = shifts.stream().<List<Tally>>map(shift -> new ArrayList<>()).toList();
        pools = shifts.stream().map(shift -> new ChangePools(0)).toList();
        slows = line.process().slowing().isPresent();
    }

    /** What a shift had in one replication; times in seconds. */
    private static final class Tally {
        private double paidTime;
        long changes;
        long slowed;
        long stopped;
        double jointCycleTime;
        double waitingForPreparation;
        double waitingForPeople;
        long starvedStops;
        double lostTime;

        void add(ChangeFacts change) {
            changes++;
            slowed += change.outcome() == Outcome.SLOWED ? 1 : 0;
            stopped += change.outcome() == Outcome.STOPPED ? 1 : 0;
            jointCycleTime += change.jointCycleTime();
            waitingForPreparation += change.waitingForPreparation();
            waitingForPeople += change.waitingForPeople();
            starvedStops += change.starvedStops();
            lostTime += change.lostTime();
        }

        long ranThrough() {
            return changes - slowed - stopped;
        }
    }

    /** The coil changes of one replication that began in one shift, as they come. */
    static final class Seen {
        private final Tally tally = new Tally();
        private final ChangePools pools = new ChangePools(0);

        /** Takes up a coil change as {@link ChangePools#add} does. */
        void add(ChangeFacts change, Optional<StripMargin> storage, boolean slows) {
            tally.add(change);
            pools.add(change, storage, slows);
        }

        void end() {
            pools.endReplication();
        }
    }

    /** Takes up a replication: what people were paid in each shift (s), and what its coil changes were. */
    void add(List<Double> paidTime, List<Seen> byShift) {
        IntStream.range(0, shifts.size()).forEach(shift -> {
            Seen here = byShift.get(shift);
            here.tally.paidTime = paidTime.get(shift);
            tallies.get(shift).add(here.tally);
            pools.get(shift).join(here.pools);
        });
    }

    /** Shift by shift, in the order of the description, with the margins at the targets of {@code plan}; empty without shifts. */
    List<ShiftOutcome> outcomes(RunPlan plan) {
        return IntStream.range(0, shifts.size())
                .mapToObj(
                        shift -> outcome(shifts.get(shift).name(), tallies.get(shift), storage(pools.get(shift), plan)))
                .toList();
    }

    private Optional<ShiftOutcome.Storage> storage(ChangePools changes, RunPlan plan) {
        if (changes.stripDrawn().count() == 0) {
            return Optional.empty();
        }
        double failures = 1 - plan.targetWithoutStop().orElse(plan.target());
        return Optional.of(new ShiftOutcome.Storage(
                changes.marginAt(1 - plan.target()),
                slows || plan.targetWithoutStop().isPresent()
                        ? Optional.of(changes.marginWithoutStopAt(failures))
                        : Optional.empty(),
                changes.stripDrawn().mean(),
                changes.refillTime().count() == 0
                        ? Optional.empty()
                        : Optional.of(changes.refillTime().mean())));
    }

    private static ShiftOutcome outcome(String name, List<Tally> replications, Optional<ShiftOutcome.Storage> storage) {
        List<Tally> any = replications.stream().filter(one -> one.changes > 0).toList();
        return new ShiftOutcome(
                name,
                new Verdict.Changes(
                        sum(replications, one -> one.changes),
                        sum(replications, Tally::ranThrough),
                        sum(replications, one -> one.slowed),
                        sum(replications, one -> one.stopped)),
                any.isEmpty() ? Optional.empty() : Optional.of(means(any)),
                storage,
                sum(replications, one -> one.starvedStops),
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
