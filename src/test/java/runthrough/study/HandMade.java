package runthrough.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Accumulator;
import runthrough.plant.Coil;
import runthrough.plant.CoilChange;
import runthrough.plant.CoilSize;
import runthrough.plant.CoilSource;
import runthrough.plant.Distribution;
import runthrough.plant.Entry;
import runthrough.plant.Line;
import runthrough.plant.Practice;
import runthrough.plant.ProcessSection;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.quantity.UnitSystem;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.PlainTotals;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.WorkDone;

/**
 * An invented line of round numbers, and coil changes and replications of it hand-made: 1 m/s, entry 2 m/s, all ramps
 * 0.5 m/s2, 50 m of strip. So T0 to T1 takes 2 s, the stop level is 1^2/(2 * 0.5) = 1 m, and a joint of T seconds needs
 * T + 1 + 1 metres.
 */
final class HandMade {
    static final double CAPACITY = 50;
    static final double STOP_LEVEL = 1;

    static final Practice STORED = new Practice.JoinWithAccumulator(Accumulator.ofCapacity(CAPACITY));

    private HandMade() {}

    /** A line whose weld takes {@code weld}. */
    static Line line(Distribution weld) {
        return line(weld, STORED, Optional.empty(), Optional.empty(), OptionalDouble.empty());
    }

    static Line line(
            Distribution weld,
            Practice practice,
            Optional<Entry.Creep> creep,
            Optional<ProcessSection.Slowing> slowing,
            OptionalDouble secondCoilSpeed) {
        Coil coil = coil(OptionalDouble.empty());
        CoilSource coilSource = secondCoilSpeed.isPresent()
                ? new CoilSource.Schedule(List.of(coil, coil(secondCoilSpeed)))
                : new CoilSource.Repeated(coil);
        ProcessSection process = new ProcessSection(
                new ProcessSection.Drive(1, 0.5, 0.5),
                new ProcessSection.Restart(Double.NaN, Distribution.constant(0)),
                slowing,
                Optional.empty(),
                0,
                new ProcessSection.Scrap(0, 0),
                new ProcessSection.JointsInProcess(Optional.empty(), Optional.empty()));
        WorkElement work = new WorkElement(
                "weld", new WorkElement.WorkTime.Timed(weld), new WorkElement.Occurrence.Always(), true);
        WorkElement load = new WorkElement(
                "load",
                new WorkElement.WorkTime.Timed(Distribution.constant(0)),
                new WorkElement.Occurrence.Always(),
                false);
        CoilChange change = new CoilChange(2, List.of(load), List.of(), List.of(work), new CoilChange.Reject.Never());
        return new Line(coilSource, new Entry(2, 2, 0.5, 0.5, creep, 0), process, change, practice, Optional.empty());
    }

    private static Coil coil(OptionalDouble speed) {
        return new Coil(
                "strip",
                new Coil.Strip(0.002, 0.25, 8000),
                new CoilSize.ByLength(Distribution.constant(1000)),
                Coil.Crops.NONE,
                speed,
                "",
                Optional.empty());
    }

    /** {@code replications} of {@code changes} coil changes, for a target of 90 %. */
    static SimulationRequest request(Line line, int changes, int replications) {
        return new SimulationRequest(
                "Line of round numbers (invented)",
                List.of(),
                line,
                new RunPlan(new RunPlan.Extent.Changes(changes), 0, replications, 1, 0.9),
                UnitSystem.METRIC);
    }

    /** A coil change that began at {@code level} and kept the strip standing for {@code joint} seconds. */
    static ChangeRecord change(double level, double joint, double waiting, double lowest, Outcome outcome) {
        return new ChangeRecord(
                1,
                0,
                0,
                0,
                100,
                102,
                102 + joint,
                waiting,
                0,
                1,
                level,
                1,
                1,
                lowest,
                STOP_LEVEL,
                outcome,
                outcome == Outcome.STOPPED ? 1 : 0,
                outcome == Outcome.STOPPED ? 30 : 0,
                outcome == Outcome.STOPPED ? 30 : 0,
                Double.NaN,
                outcome == Outcome.RAN_THROUGH
                        ? Optional.empty()
                        : Optional.of(new WorkDone(List.of(), List.of(joint - waiting), 0, 0, List.of(waiting))));
    }

    /** One that began full and ran through a joint of {@code joint} seconds, without waiting. */
    static ChangeRecord ranThrough(double joint) {
        return change(CAPACITY, joint, 0, CAPACITY - joint - 2, Outcome.RAN_THROUGH);
    }

    /** A replication of an hour with the coil changes given; each scraps a metre (4 kg). */
    static Replication hour(int index, ChangeRecord... changes) {
        int ran = count(Outcome.RAN_THROUGH, changes);
        int stopped = count(Outcome.STOPPED, changes);
        int slowed = count(Outcome.SLOWED, changes);
        double lost = 30 * stopped;
        Totals totals = PlainTotals.of(
                3600,
                changes.length,
                ran,
                slowed,
                stopped,
                ran,
                stopped,
                slowed,
                0,
                3600 - lost,
                4 * (3600 - lost),
                3600 - lost,
                3600,
                lost,
                lost,
                changes.length,
                4 * changes.length,
                0,
                0,
                0,
                lost,
                0,
                0,
                3600 * 45.0,
                8 - index,
                index / 10.0,
                index,
                0);
        return new Replication(index, totals, List.of(changes), List.of(), Optional.empty());
    }

    private static int count(Outcome outcome, ChangeRecord... changes) {
        int count = 0;
        for (ChangeRecord change : changes) {
            count += change.outcome() == outcome ? 1 : 0;
        }
        return count;
    }
}
