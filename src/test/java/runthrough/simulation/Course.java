package runthrough.simulation;

import java.util.ArrayList;
import java.util.List;
import runthrough.simulation.records.Trace.EntryState;
import runthrough.simulation.records.Trace.Point;
import runthrough.simulation.records.Trace.ProcessState;

/** Reads the trace of a run for tests: the line at any time, and when its sections took up a state. SI units. */
public final class Course {
    private final List<Point> points;

    private Course(List<Point> points) {
        this.points = points;
    }

    public static Course of(Replication run) {
        return new Course(run.trace().orElseThrow().points());
    }

    public List<Point> points() {
        return points;
    }

    /** Level (m) at {@code time}. */
    public double level(double time) {
        Point point = last(time);
        return point.levelAfter(time - point.time());
    }

    /** Entry speed (m/s) at {@code time}, after what happens then. */
    public double entrySpeed(double time) {
        Point point = last(time);
        return point.entrySpeedAfter(time - point.time());
    }

    /** Process speed (m/s) at {@code time}, after what happens then. */
    public double processSpeed(double time) {
        Point point = last(time);
        return point.processSpeedAfter(time - point.time());
    }

    public double entryAcceleration(double time) {
        return last(time).entryAcceleration();
    }

    public double processAcceleration(double time) {
        return last(time).processAcceleration();
    }

    public EntryState entryState(double time) {
        return last(time).entryState();
    }

    public ProcessState processState(double time) {
        return last(time).processState();
    }

    /** The last breakpoint at or (but for rounding) before {@code time}. */
    private Point last(double time) {
        double until = time + 1e-9;
        Point found = points.get(0);
        for (Point point : points) {
            if (point.time() > until) {
                break;
            }
            found = point;
        }
        return found;
    }

    /** When the entry section took up {@code state} for the {@code n}-th time, from 1 (s). */
    public double takesUp(EntryState state, int n) {
        return times(state).get(n - 1);
    }

    /** When the process section took up {@code state} for the {@code n}-th time, from 1 (s). */
    public double takesUp(ProcessState state, int n) {
        return times(state).get(n - 1);
    }

    /** All times at which the entry section took up {@code state}; a state left at the same instant does not count. */
    public List<Double> times(EntryState state) {
        return times(points.stream().map(Point::entryState).toList(), state);
    }

    /** All times at which the process section took up {@code state}; a state left at the same instant does not count. */
    public List<Double> times(ProcessState state) {
        return times(points.stream().map(Point::processState).toList(), state);
    }

    private List<Double> times(List<? extends Enum<?>> states, Enum<?> wanted) {
        List<Double> times = new ArrayList<>();
        Enum<?> before = null;
        for (int i = 0; i < points.size(); i++) {
            boolean lasts = i + 1 == points.size()
                    || points.get(i + 1).time() > points.get(i).time();
            if (lasts) {
                if (states.get(i) == wanted && before != wanted) {
                    times.add(points.get(i).time());
                }
                before = states.get(i);
            }
        }
        return times;
    }
}
