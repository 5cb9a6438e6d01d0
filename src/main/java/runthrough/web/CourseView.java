package runthrough.web;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import runthrough.plant.CoilChange;
import runthrough.plant.RunPlan;
import runthrough.plant.SimulationRequest;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Trace;
import runthrough.simulation.records.WorkRecord;

/**
 * The exact course of the first coil changes of the first replication, in columns, one entry a breakpoint; SI units.
 *
 * @param t time
 * @param x level
 * @param ve entry speed, {@code ae} its acceleration from there on
 * @param vp process speed, {@code ap} its acceleration
 * @param r what is left of the running coil
 * @param entered strip that has passed the joiner since time 0
 * @param processed strip that has been processed since time 0
 * @param rated process speed in force
 * @param entry what the entry does
 * @param process what holds the process
 * @param changes coil changes
 * @param joints made at them, on their way to the process
 * @param work elements of work
 * @param kindOf kind of each coil, from coil 1 on
 * @param usable usable length of each coil (m) at its start, from coil 1 on
 * @param stores whether there is an accumulator
 * @param preparesNothing whether the next coil needs no work
 */
@SuppressWarnings("ArrayRecordComponent") // columns of numbers, made once and sent
record CourseView(
        double[] t,
        double[] x,
        double[] ve,
        double[] ae,
        double[] vp,
        double[] ap,
        double[] r,
        double[] entered,
        double[] processed,
        double[] rated,
        String[] entry,
        String[] process,
        List<ChangeView> changes,
        List<JointView> joints,
        List<DoneView> work,
        int[] kindOf,
        double[] usable,
        boolean stores,
        boolean preparesNothing) {

    /** As many as somebody will watch. */
    private static final int CHANGES = 40;

    CourseView {
        changes = List.copyOf(changes);
        joints = List.copyOf(joints);
        work = List.copyOf(work);
    }

    /** A coil change: its number, and when it starts, the tail stops and the joint is released. */
    record ChangeView(int number, double start, double stopped, double released) {}

    /** An element of work done: null as its end when the run ended first. */
    record DoneView(
            String list,
            String name,
            int change,
            int pass,
            double start,
            @Nullable Double end) {}

    static CourseView of(SimulationRequest request) {
        RunPlan plan = new RunPlan(
                new RunPlan.Extent.Changes(CHANGES),
                0,
                1,
                request.run().seed(),
                request.run().target());
        Replication run = LineSimulator.of(request.line(), plan).run(0, Detail.TRACE);
        Trace trace = run.trace().orElseThrow();
        List<Trace.Point> points = trace.points();
        PassedStrip strip = new PassedStrip(trace);
        return new CourseView(
                column(points, Trace.Point::time),
                column(points, Trace.Point::level),
                column(points, Trace.Point::entrySpeed),
                column(points, Trace.Point::entryAcceleration),
                column(points, Trace.Point::processSpeed),
                column(points, Trace.Point::processAcceleration),
                column(points, Trace.Point::remaining),
                strip.entered(),
                strip.processed(),
                column(points, Trace.Point::ratedSpeed),
                points.stream().map(point -> word(point.entryState())).toArray(String[]::new),
                ProcessWords.of(request.line(), run.changes(), trace),
                run.changes().stream()
                        .map(one -> new ChangeView(one.number(), one.start(), one.tailStopped(), one.released()))
                        .toList(),
                JointView.of(request.line(), run.changes(), trace, strip),
                run.work().stream().map(record -> done(record, request)).toList(),
                kinds(run.changes()),
                usable(points),
                !request.line().practice().isOneStrip(),
                request.line().change().prepare().isEmpty());
    }

    private static double[] column(List<Trace.Point> points, ToDoubleFunction<Trace.Point> value) {
        return points.stream().mapToDouble(value).toArray();
    }

    private static String word(Enum<?> state) {
        return state.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static DoneView done(WorkRecord record, SimulationRequest request) {
        CoilChange change = request.line().change();
        boolean rethreads = !request.line().practice().hasJoiner();
        String name = switch (record.list()) {
            case PREPARE -> change.prepare().get(record.element()).name();
            case TAIL -> change.tail().get(record.element()).name();
            case JOIN ->
                rethreads
                        ? "thread the line"
                        : change.join().get(record.element()).name();
        };
        return new DoneView(
                word(record.list()),
                name,
                record.change(),
                record.pass(),
                record.start(),
                Double.isNaN(record.end()) ? null : record.end());
    }

    private static int[] kinds(List<ChangeRecord> changes) {
        int[] kinds = new int[changes.size() + 1];
        for (int i = 0; i < changes.size(); i++) {
            kinds[i] = changes.get(i).tailCoil();
            kinds[i + 1] = changes.get(i).headCoil();
        }
        return kinds;
    }

    /** Each coil's length is what is left of it where it begins: at time 0, and wherever what is left rises. */
    private static double[] usable(List<Trace.Point> points) {
        double[] lengths = new double[CHANGES + 2];
        int coil = 0;
        lengths[coil++] = points.get(0).remaining();
        for (int i = 1; i < points.size() && coil < lengths.length; i++) {
            if (points.get(i).remaining() > points.get(i - 1).remaining()) {
                lengths[coil++] = points.get(i).remaining();
            }
        }
        return Arrays.copyOf(lengths, coil);
    }
}
