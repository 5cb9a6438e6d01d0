package runthrough.web;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import runthrough.plant.CoilChange;
import runthrough.plant.SimulationRequest;
import runthrough.plant.WorkElement;
import runthrough.simulation.Replication;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Trace;
import runthrough.simulation.records.WorkRecord;

/**
 * The exact course of some coil changes of a replication, in columns, one entry a breakpoint; SI units.
 *
 * @param replication which it is, from 0
 * @param worst number of the coil change that it is shown for
 * @param searched coil changes of all replications that were looked through for the worst of them; 0 where it was asked for
 * @param crew people who are there at all times; null where that changes with the shifts
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
 * @param kindOf kind of each coil, from coil 1 of the replication on
 * @param usable usable length of each coil (m) at its start, from coil 1 on
 * @param stores whether there is an accumulator
 * @param joins whether there is a joiner; without one the line is threaded anew
 * @param preparesNothing whether the next coil needs no work
 */
@SuppressWarnings("ArrayRecordComponent") // columns of numbers, made once and sent
record CourseView(
        int replication,
        int worst,
        long searched,
        @Nullable Integer crew,
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
        boolean joins,
        boolean preparesNothing) {

    /** As many as somebody will watch from the one that is shown. */
    private static final int CHANGES = 40;

    /** So many before it, that one may go back. */
    private static final int BEFORE = 3;

    CourseView {
        changes = List.copyOf(changes);
        joints = List.copyOf(joints);
        work = List.copyOf(work);
    }

    /**
     * A coil change.
     *
     * @param number of it
     * @param start when it starts (s)
     * @param stopped when the tail stops
     * @param released when the joint is released
     * @param matched when the accumulator is full again and the speeds are equal; null where the next coil change comes first
     * @param stopLevel level at which the process must stop (m)
     * @param outcome what it did to the process
     */
    record ChangeView(
            int number,
            double start,
            double stopped,
            double released,
            @Nullable Double matched,
            double stopLevel,
            String outcome) {
        static ChangeView of(ChangeRecord change) {
            return new ChangeView(
                    change.number(),
                    change.start(),
                    change.tailStopped(),
                    change.released(),
                    Double.isNaN(change.refillTime()) ? null : change.released() + change.refillTime(),
                    change.stopLevel(),
                    word(change.outcome()));
        }
    }

    /** An element of work done, by so many people: null as its end when the run ended first. */
    record DoneView(
            String list,
            String name,
            int people,
            int change,
            int pass,
            double start,
            @Nullable Double end) {}

    /** The course around {@code shown}. */
    static CourseView of(SimulationRequest request, WorstChange shown) {
        int last = shown.number() + CHANGES - 1;
        Replication run = WorstChange.simulator(request, last).run(shown.replication(), Detail.TRACE);
        Trace trace = run.trace().orElseThrow();
        List<ChangeRecord> changes = run.changes().stream()
                .filter(one -> one.number() >= shown.number() - BEFORE)
                .toList();
        // From the moment at which the one before is done with.
        double from = run.changes().stream()
                .filter(one -> one.number() < shown.number() - BEFORE)
                .mapToDouble(ChangeRecord::released)
                .max()
                .orElse(0);
        int[] places = IntStream.range(0, trace.points().size())
                .filter(i -> trace.points().get(i).time() >= from)
                .toArray();
        List<Trace.Point> points =
                Arrays.stream(places).mapToObj(trace.points()::get).toList();
        PassedStrip strip = new PassedStrip(trace);
        double[] entered = strip.entered();
        double[] processed = strip.processed();
        CoilChange work = request.line().change();
        return new CourseView(
                shown.replication(),
                shown.number(),
                shown.searched(),
                work.shifts().isPresent() ? null : work.crew(),
                column(points, Trace.Point::time),
                column(points, Trace.Point::level),
                column(points, Trace.Point::entrySpeed),
                column(points, Trace.Point::entryAcceleration),
                column(points, Trace.Point::processSpeed),
                column(points, Trace.Point::processAcceleration),
                column(points, Trace.Point::remaining),
                Arrays.stream(places).mapToDouble(i -> entered[i]).toArray(),
                Arrays.stream(places).mapToDouble(i -> processed[i]).toArray(),
                column(points, Trace.Point::ratedSpeed),
                points.stream().map(point -> word(point.entryState())).toArray(String[]::new),
                processWords(request, run, places),
                changes.stream().map(ChangeView::of).toList(),
                JointView.of(request.line(), run.changes(), trace, strip).stream()
                        .filter(joint -> joint.past() > processed[places[0]])
                        .toList(),
                run.work().stream()
                        .filter(record -> !(record.end() < from))
                        .map(record -> done(record, request))
                        .toList(),
                kinds(run.changes()),
                usable(trace.points()),
                !request.line().practice().isOneStrip(),
                request.line().practice().hasJoiner(),
                work.prepare().isEmpty());
    }

    private static String[] processWords(SimulationRequest request, Replication run, int[] places) {
        String[] words =
                ProcessWords.of(request.line(), run.changes(), run.trace().orElseThrow());
        return Arrays.stream(places).mapToObj(i -> words[i]).toArray(String[]::new);
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
        WorkElement element = switch (record.list()) {
            case PREPARE -> change.prepare().get(record.element());
            case TAIL -> change.tail().get(record.element());
            case JOIN -> request.line().work().join().get(record.element());
        };
        return new DoneView(
                word(record.list()),
                rethreads && record.list() == WorkRecord.WorkList.JOIN ? "thread the line" : element.name(),
                element.people(),
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
        return IntStream.range(0, points.size())
                .filter(i ->
                        i == 0 || points.get(i).remaining() > points.get(i - 1).remaining())
                .mapToDouble(i -> points.get(i).remaining())
                .toArray();
    }
}
