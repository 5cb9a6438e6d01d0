package runthrough.simulation.account;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runthrough.simulation.records.Detail;
import runthrough.simulation.records.Trace;
import runthrough.simulation.records.Trace.Point;
import runthrough.simulation.records.Trace.ProcessState;
import runthrough.simulation.records.WorkRecord;

/** Keeps work elements and breakpoints, as far as they were asked for. */
public final class Recorder {
    private final Detail detail;
    private final List<WorkRecord> work = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();

    /** A recorder that keeps as much as {@code detail} says. */
    public Recorder(Detail detail) {
        this.detail = detail;
    }

    /** Whether work elements are kept. */
    public boolean keepsWork() {
        return detail.keepsWork();
    }

    /** A work element has ended. */
    public void work(WorkRecord element) {
        work.add(element);
    }

    /** Whether breakpoints are kept. */
    public boolean isTracing() {
        return detail == Detail.TRACE;
    }

    /** Adds a breakpoint; of several with the same motion at one time only the last says something. */
    public void point(double time, ObservedLine line) {
        Point point = new Point(
                time,
                line.level(),
                line.entrySpeed(),
                line.entryAcceleration(),
                line.processSpeed(),
                line.processAcceleration(),
                line.remaining(),
                line.ratedSpeed(),
                line.entryState(),
                state(line));
        if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
            points.add(point);
        }
    }

    private static ProcessState state(ObservedLine line) {
        if (line.isDown()) {
            return ProcessState.DOWNTIME;
        }
        if (line.isBroken()) {
            return ProcessState.JOINT_BREAK;
        }
        if (line.isStarved()) {
            return ProcessState.STARVED;
        }
        if (line.isSlowed()) {
            return ProcessState.SLOWED;
        }
        return line.isInJointPassage() ? ProcessState.JOINT_PASSAGE : ProcessState.RUNNING;
    }

    /** Work elements in order of their start; what was under way at the end is not among them. */
    public List<WorkRecord> work() {
        work.sort(Comparator.comparingDouble(WorkRecord::start));
        return List.copyOf(work);
    }

    /** The breakpoints, where they were asked for; {@code capacity} is that of the accumulator (m). */
    public Optional<Trace> trace(double capacity) {
        return isTracing() ? Optional.of(new Trace(points, capacity)) : Optional.empty();
    }
}
