package runthrough.study.sensitivity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import runthrough.plant.Line;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.simulation.records.Detail;
import runthrough.study.Evaluator;
import runthrough.study.StudyException;
import runthrough.study.cause.CauseFinder;
import runthrough.study.cause.NamedCauses;
import runthrough.study.sensitivity.Swing.End;
import runthrough.study.sensitivity.SwingEffect.AtEnd;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.Estimators;

/** Moves inputs one at a time, low and high, all under the same random numbers. */
final class SwingStudy {
    private final SimulationRequest request;
    private final List<Swing> swings;
    private final ChangeMeasure measure;
    private final boolean chance;
    private final int replications;

    SwingStudy(SimulationRequest request, List<Swing> swings) {
        this.request = request;
        this.swings = List.copyOf(swings);
        this.measure = ChangeMeasure.of(request.line()).get(0);
        // An input may bring chance into a line that has none.
        this.chance = !request.line().isDeterministic()
                || swings.stream()
                        .flatMap(Swing::ends)
                        .flatMap(end -> end.line().stream())
                        .anyMatch(line -> !line.isDeterministic());
        this.replications = chance ? request.run().replications() : 1;
    }

    /** Whether anything is random, in the line or at an end of a range. */
    boolean chance() {
        return chance;
    }

    /** How many lines are run: the present one, and one for each end that is possible. */
    int runs() {
        return 1 + ends();
    }

    private int ends() {
        return (int) swings.stream()
                .flatMap(Swing::ends)
                .filter(end -> end.line().isPresent())
                .count();
    }

    /** Runs it; calls {@code step} after each line. */
    Swings run(double target, Evaluator evaluator, Runnable step) {
        CauseFinder finder = new CauseFinder(request.line());
        List<ReplicationValues> base =
                seen(request.line(), evaluator, (values, replication) -> values.with(causes(finder, replication)));
        step.run();
        long changes = base.stream().mapToLong(seen -> seen.changes()).sum();
        MarginStatistic yardstick = measure == ChangeMeasure.MARGIN
                ? MarginStatistic.atTarget(target, changes, replications, chance)
                : MarginStatistic.mean(replications);
        List<SwingEffect> effects = new ArrayList<>();
        for (Swing swing : swings) {
            AtEnd low = atEnd(swing.low(), base, yardstick, evaluator, step);
            AtEnd high = atEnd(swing.high(), base, yardstick, evaluator, step);
            effects.add(new SwingEffect(swing, low, high));
        }
        return new Swings(
                measure,
                yardstick.allowed().isPresent(),
                yardstick.value(base),
                Estimators.share(
                        base.stream().mapToLong(ReplicationValues::ranThrough).toArray(),
                        base.stream().mapToLong(seen -> seen.changes()).toArray()),
                effects,
                causes(base));
    }

    private AtEnd atEnd(
            End end, List<ReplicationValues> base, MarginStatistic yardstick, Evaluator evaluator, Runnable step) {
        if (end.line().isEmpty()) {
            return new AtEnd(end, Optional.empty(), Optional.empty());
        }
        try {
            List<ReplicationValues> there = seen(end.line().get(), evaluator, (values, replication) -> values);
            Estimate share = Estimators.mean(IntStream.range(0, base.size())
                    .mapToDouble(i -> there.get(i).share() - base.get(i).share())
                    .toArray());
            return new AtEnd(
                    end,
                    Optional.of(Change.of(yardstick.difference(there, base), ends(), chance)),
                    Optional.of(Change.of(share, ends(), chance)));
        } catch (StudyException e) {
            return new AtEnd(end.refused(String.valueOf(e.getMessage())), Optional.empty(), Optional.empty());
        } finally {
            step.run();
        }
    }

    private static List<NamedCauses.Count> causes(CauseFinder finder, Replication replication) {
        NamedCauses causes = new NamedCauses();
        replication.changes().forEach(change -> causes.add(finder, change));
        return causes.list();
    }

    /** Those of the verdict, which runs all replications also where one shows all. */
    private List<NamedCauses.Count> causes(List<ReplicationValues> base) {
        NamedCauses causes = new NamedCauses();
        for (int i = 0; i < request.run().replications(); i++) {
            causes.add(base.get(i % base.size()).causes());
        }
        return causes.list();
    }

    private List<ReplicationValues> seen(
            Line line, Evaluator evaluator, BiFunction<ReplicationValues, Replication, ReplicationValues> eye) {
        RunPlan plan = request.run();
        LineSimulator simulator = new LineSimulator(evaluator.checked(line), plan);
        MeasureReader gauge = new MeasureReader(line);
        List<ReplicationValues> seen = new ArrayList<>();
        evaluator.<ReplicationValues>inOrder(
                replications,
                i -> {
                    Replication replication = Evaluator.run(i, index -> simulator.run(index, Detail.CHANGES));
                    return eye.apply(ReplicationValues.of(replication, gauge, measure), replication);
                },
                seen::add);
        if (seen.stream().anyMatch(replication -> replication.changes() == 0)) {
            throw new StudyException(
                    "no coil change was completed in a replication; give a longer run, or fewer coil changes to leave out");
        }
        return seen;
    }
}
