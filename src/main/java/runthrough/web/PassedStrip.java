package runthrough.web;

import java.util.List;
import java.util.OptionalDouble;
import runthrough.simulation.records.Trace;

/**
 * Strip that has passed the joiner and the process since time 0, counted along a trace: exact, since speeds are straight lines
 * between its points. Rules MOTION-1, MOTION-2.
 */
final class PassedStrip {
    private final List<Trace.Point> points;
    private final double[] entered;
    private final double[] processed;

    PassedStrip(Trace trace) {
        points = trace.points();
        entered = new double[points.size()];
        processed = new double[points.size()];
        for (int i = 1; i < points.size(); i++) {
            entered[i] = enteredAfter(i - 1, points.get(i).time());
            processed[i] = processedAfter(i - 1, points.get(i).time());
        }
    }

    /** Strip (m) that has passed the joiner at each point. */
    double[] entered() {
        return entered.clone();
    }

    /** Strip (m) processed at each point. */
    double[] processed() {
        return processed.clone();
    }

    /** Strip (m) that has passed the joiner at {@code time} (s). */
    double enteredAt(double time) {
        return enteredAfter(before(time), time);
    }

    /** Strip (m) processed at {@code time} (s). */
    double processedAt(double time) {
        return processedAfter(before(time), time);
    }

    /** The level (m) at {@code time} (s). */
    double levelAt(double time) {
        Trace.Point point = points.get(before(time));
        return point.levelAfter(time - point.time());
    }

    /** When (s) so many metres have been processed; empty where the trace ends first. */
    OptionalDouble timeOfProcessed(double metres) {
        for (int i = 0; i + 1 < points.size(); i++) {
            if (processed[i + 1] >= metres) {
                Trace.Point point = points.get(i);
                double left = Math.max(0, metres - processed[i]);
                double speed = point.processSpeed();
                // The stable form of the root; a piece in which nothing is processed is met with nothing left only.
                double square = Math.max(0, speed * speed + 2 * point.processAcceleration() * left);
                double after = left == 0 ? 0 : 2 * left / (speed + Math.sqrt(square));
                return OptionalDouble.of(point.time() + after);
            }
        }
        return OptionalDouble.empty();
    }

    private double enteredAfter(int i, double time) {
        Trace.Point point = points.get(i);
        double dt = time - point.time();
        return entered[i] + dt * (point.entrySpeed() + dt * point.entryAcceleration() / 2);
    }

    private double processedAfter(int i, double time) {
        Trace.Point point = points.get(i);
        double dt = time - point.time();
        return processed[i] + dt * (point.processSpeed() + dt * point.processAcceleration() / 2);
    }

    /** Index of the last point at or before {@code time}. */
    private int before(double time) {
        int low = 0;
        int high = points.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (points.get(middle).time() <= time) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
