package runthrough.simulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import runthrough.simulation.Trace.Point;
import runthrough.simulation.Trace.ProcessState;
import runthrough.simulation.WorkRecord.WorkList;

/** Keeps work elements and breakpoints, as far as they were asked for. */
final class Recorder {
    private final Detail detail;
    private final List<WorkRecord> work = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();

    Recorder(Detail detail) {
        this.detail = detail;
    }

    void work(int change, int pass, WorkList list, int element, double start, double end) {
        if (detail != Detail.CHANGES) {
            work.add(new WorkRecord(change, pass, list, element, start, end));
        }
    }

    boolean isTracing() {
        return detail == Detail.TRACE;
    }

    /** Adds a breakpoint; of several with the same motion at one time only the last says something. */
    void point(double time, LineState strip, EntrySection entry, ProcessControl process) {
        Point point = new Point(
                time,
                strip.level,
                strip.entrySpeed,
                strip.entryAcceleration,
                strip.processSpeed,
                strip.processAcceleration,
                strip.remaining,
                process.rated(),
                entry.state(),
                state(process));
        if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
            points.add(point);
        }
    }

    private static ProcessState state(ProcessControl process) {
        if (process.isInOwnStop()) {
            return ProcessState.OWN_STOP;
        }
        if (process.isStarved()) {
            return ProcessState.STARVED;
        }
        return process.isSlowed() ? ProcessState.SLOWED : ProcessState.RUNNING;
    }

    /** Work elements in order of their start; what was under way at the end is not among them. */
    List<WorkRecord> work() {
        work.sort(Comparator.comparingDouble(WorkRecord::start));
        return List.copyOf(work);
    }

    Optional<Trace> trace(double capacity) {
        return isTracing() ? Optional.of(new Trace(points, capacity)) : Optional.empty();
    }
}
