package runthrough.chart.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.data.xy.XYSeries;
import runthrough.quantity.Unit;
import runthrough.simulation.records.Trace;

/**
 * The curves of a stretch of a trace as points to be joined by straight lines. A parabola is sampled so finely that the
 * line stays within a two-thousandth of the height of the picture; speeds are straight anyhow, and a jump is vertical.
 */
final class TraceCurve {
    /** Most points of a curve: what a picture of this width can show. */
    static final int MOST_POINTS = 1200;

    private static final double TOLERANCE = 1.0 / 2000;

    private final TraceWindow window;
    private final Unit clock;
    private final double origin;

    /** Curves over {@code window}, in units of {@code clock} after {@code origin} (s). */
    TraceCurve(TraceWindow window, Unit clock, double origin) {
        this.window = window;
        this.clock = clock;
        this.origin = origin;
    }

    /** The level, {@code height} (m) being what the picture shows from bottom to top. */
    XYSeries level(Unit unit, double height) {
        List<double[]> points = new ArrayList<>();
        for (TraceWindow.Piece piece : window.pieces()) {
            Trace.Point start = piece.start();
            double bend = Math.abs(start.entryAcceleration() - start.processAcceleration());
            double seconds = piece.end() - piece.begin();
            // A chord over h seconds of a parabola misses it by bend h^2 / 8.
            int steps = (int) Math.ceil(seconds / Math.sqrt(8 * TOLERANCE * height / bend));
            for (int i = 0; i <= Math.max(1, steps); i++) {
                double dt = piece.begin() + seconds * i / Math.max(1, steps);
                points.add(point(start.time() + dt, unit.fromSi(start.levelAfter(dt))));
            }
        }
        return series("level", points);
    }

    /** The entry speed. */
    XYSeries entrySpeed(Unit unit) {
        return ends("entry", unit, Trace.Point::entrySpeed, Trace.Point::entryAcceleration);
    }

    /** The process speed. */
    XYSeries processSpeed(Unit unit) {
        return ends("process", unit, Trace.Point::processSpeed, Trace.Point::processAcceleration);
    }

    /** What does not change between two points, drawn as steps; {@code value} in SI. */
    XYSeries steps(String name, Unit unit, ToDoubleFunction<Trace.Point> value) {
        return ends(name, unit, value, point -> 0);
    }

    private XYSeries ends(
            String name, Unit unit, ToDoubleFunction<Trace.Point> value, ToDoubleFunction<Trace.Point> slope) {
        List<double[]> points = new ArrayList<>();
        for (TraceWindow.Piece piece : window.pieces()) {
            Trace.Point start = piece.start();
            for (double dt : new double[] {piece.begin(), piece.end()}) {
                double v = value.applyAsDouble(start) + slope.applyAsDouble(start) * dt;
                points.add(point(start.time() + dt, unit.fromSi(v)));
            }
        }
        return series(name, points);
    }

    private double[] point(double time, double value) {
        return new double[] {clock.fromSi(time - origin), value};
    }

    private static XYSeries series(String name, List<double[]> points) {
        XYSeries series = new XYSeries(name, false, true);
        Thinning.thinned(straightened(points), MOST_POINTS).forEach(p -> series.add(p[0], p[1]));
        return series;
    }

    /** Leaves out points that repeat the one before, and points in the middle of a level stretch. */
    private static List<double[]> straightened(List<double[]> points) {
        List<double[]> kept = new ArrayList<>();
        for (double[] point : points) {
            int n = kept.size();
            if (n > 0 && kept.get(n - 1)[0] == point[0] && kept.get(n - 1)[1] == point[1]) {
                continue;
            }
            if (n > 1 && kept.get(n - 1)[1] == point[1] && kept.get(n - 2)[1] == point[1]) {
                kept.remove(n - 1);
            }
            kept.add(point);
        }
        return kept;
    }
}
