package runthrough.chart.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import runthrough.plant.StorageForm;
import runthrough.plant.WorkElement;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Outcome;
import runthrough.simulation.records.PlainTotals;
import runthrough.simulation.records.Totals;
import runthrough.simulation.records.Trace;
import runthrough.simulation.records.Trace.EntryState;
import runthrough.simulation.records.Trace.ProcessState;
import runthrough.simulation.records.WorkRecord;
import runthrough.simulation.records.WorkRecord.WorkList;

/**
 * A run put together here, phase by phase, so that charts can be checked against numbers that no engine made: 72 m of
 * storage, process at 0.75 m/s, entry up to 1.5 m/s, as many coil changes as joint cycle times are given, 400 s apart once full.
 */
public final class HandMadeRun {
    public static final double CAPACITY = 72;
    public static final double V = 0.75;
    private static final double TOP = 1.5;
    private static final double A_E = 0.3;
    private static final double D_E = 0.4;
    private static final double A_P = 0.2;
    private static final double D_P = 0.25;
    private static final double MATCHED = 400;

    private final Line line = line(new StorageForm.Strands(8, 9, 0.2, Double.POSITIVE_INFINITY, false));
    private final List<Trace.Point> points = new ArrayList<>();
    private final List<ChangeRecord> changes = new ArrayList<>();
    private final List<WorkRecord> work = new ArrayList<>();
    private double t;
    private double x = CAPACITY;
    private double ve = V;
    private double vp = V;

    private HandMadeRun() {}

    /** The run with these joint cycle times (s). */
    public static Replication of(double... jointCycleTimes) {
        HandMadeRun run = new HandMadeRun();
        run.go(MATCHED, 0, 0, EntryState.MATCHED, ProcessState.RUNNING);
        for (double joint : jointCycleTimes) {
            run.change(joint);
        }
        run.go(1e-9, 0, 0, EntryState.MATCHED, ProcessState.RUNNING);
        return new Replication(0, run.totals(), run.changes, run.work, Optional.of(new Trace(run.points, CAPACITY)));
    }

    /** The line that the run is of. */
    public static Line line() {
        return new HandMadeRun().line;
    }

    private void change(double joint) {
        double start = t;
        double atStart = x;
        boolean starved = x - V * V / (2 * D_E) - V * joint - V * V / (2 * A_E) < stopLevel();
        go(V / D_E, -D_E, 0, EntryState.RUNNING_OUT, ProcessState.RUNNING);
        ve = 0;
        double tailStopped = t;
        if (starved) {
            double falls = (x - stopLevel()) / V;
            go(falls, 0, 0, EntryState.STANDING, ProcessState.RUNNING);
            go(V / D_P, 0, -D_P, EntryState.STANDING, ProcessState.STARVED);
            vp = 0;
            go(joint - falls - V / D_P, 0, 0, EntryState.STANDING, ProcessState.STARVED);
        } else {
            go(joint, 0, 0, EntryState.STANDING, ProcessState.RUNNING);
        }
        double released = t;
        double lowest = refill(starved);
        double matched = t;
        go(MATCHED, 0, 0, EntryState.MATCHED, ProcessState.RUNNING);
        record(start, tailStopped, released, atStart, lowest, starved, matched - released);
    }

    /** From the release of the joint until matched; gives the lowest level (m) since the start of the change. */
    private double refill(boolean starved) {
        double lowest = x;
        ProcessState held = starved ? ProcessState.STARVED : ProcessState.RUNNING;
        if (!starved) {
            go(V / A_E, A_E, 0, EntryState.FILLING, held);
            lowest = x;
            go((TOP - V) / A_E, A_E, 0, EntryState.FILLING, held);
        } else {
            go(TOP / A_E, A_E, 0, EntryState.FILLING, held);
            ve = TOP;
            go(Math.max(0, (line.restartLevel(V) - x) / TOP), 0, 0, EntryState.FILLING, held);
            go(V / A_P, 0, A_P, EntryState.FILLING, ProcessState.RUNNING);
            vp = V;
        }
        ve = TOP;
        double u = TOP - V;
        go((CAPACITY - x - u * u / (2 * D_E)) / u, 0, 0, EntryState.FILLING, ProcessState.RUNNING);
        go(u / D_E, -D_E, 0, EntryState.SETTLING, ProcessState.RUNNING);
        ve = V;
        x = CAPACITY;
        return lowest;
    }

    private void record(
            double start, double t1, double t2, double atStart, double lowest, boolean starved, double refill) {
        int number = changes.size() + 1;
        double waiting = number % 3 == 0 ? 15 : 0;
        changes.add(new ChangeRecord(
                number,
                0,
                0,
                0,
                start,
                t1,
                t2,
                waiting,
                0,
                1,
                atStart,
                V * V / (2 * D_E),
                V,
                lowest,
                stopLevel(),
                starved ? Outcome.STOPPED : Outcome.RAN_THROUGH,
                starved ? 1 : 0,
                starved ? 30 : 0,
                starved ? 30 / V : 0,
                refill,
                Optional.empty()));
        work.add(new WorkRecord(number, 1, WorkList.PREPARE, 0, t1 - 180, t1 - 80, List.of()));
        work.add(new WorkRecord(number, 1, WorkList.PREPARE, 1, t1 - 80, t1 + 8 + waiting, List.of()));
        work.add(new WorkRecord(number, 1, WorkList.TAIL, 0, t1, t1 + 8, List.of()));
        double fit = t1 + 8 + waiting;
        work.add(new WorkRecord(number, 1, WorkList.JOIN, 0, fit, fit + 15, List.of()));
        work.add(new WorkRecord(number, 1, WorkList.JOIN, 1, fit + 15, t2 - 10, List.of()));
        work.add(new WorkRecord(number, 1, WorkList.JOIN, 2, t2 - 10, t2, List.of()));
    }

    private double stopLevel() {
        return line.stopLevel(V);
    }

    private void go(double dt, double ae, double ap, EntryState entry, ProcessState process) {
        points.add(new Trace.Point(t, x, ve, ae, vp, ap, 500, V, entry, process));
        x += dt * (ve - vp) + dt * dt / 2 * (ae - ap);
        ve += ae * dt;
        vp += ap * dt;
        t += dt;
    }

    private Totals totals() {
        int stopped = (int)
                changes.stream().filter(c -> c.outcome() == Outcome.STOPPED).count();
        return PlainTotals.of(
                t,
                changes.size(),
                changes.size() - stopped,
                0,
                stopped,
                changes.size(),
                stopped,
                0,
                0,
                V * t,
                V * t * 3.768,
                V * t,
                V * t,
                0,
                0,
                0.7 * changes.size(),
                2.6 * changes.size(),
                0,
                0,
                0,
                0,
                0,
                0,
                CAPACITY * t,
                0,
                0,
                0,
                0);
    }

    private static Line line(StorageForm form) {
        Coil coil = new Coil("2.0 x 240", new Coil.Strip(0.002, 0.24, 7850), new CoilSize.ByDiameters(1.45, 0.508, 1))
                .withCrops(0.4, 0.3);
        CoilChange change = new CoilChange(
                2,
                List.of(
                        timed("fetch coil", Distribution.constant(100)),
                        timed("load, open and square the head", Distribution.constant(88))),
                List.of(timed("shear tail", Distribution.constant(8))),
                List.of(
                        timed("fit up", Distribution.constant(15)),
                        timed("weld", Distribution.triangular(20, 30, 60)),
                        timed("inspect", Distribution.constant(10))),
                new CoilChange.Reject.Never());
        return new Line(
                new CoilSource.Repeated(coil),
                new Entry(2, TOP, A_E, D_E, Optional.empty(), 0),
                ProcessSection.running(V, A_P, D_P),
                change,
                new Practice.JoinWithAccumulator(
                        new Accumulator(form, Double.POSITIVE_INFINITY, 2, Double.POSITIVE_INFINITY)),
                Optional.empty());
    }

    private static WorkElement timed(String name, Distribution time) {
        return new WorkElement(name, new WorkElement.WorkTime.Timed(time), new WorkElement.Occurrence.Always(), true);
    }
}
