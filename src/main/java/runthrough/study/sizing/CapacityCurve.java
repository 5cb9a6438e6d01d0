package runthrough.study.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import runthrough.study.Evaluation;
import runthrough.study.search.Crossing;
import runthrough.study.sizing.Sizing.Point;

/** The share run through against the capacity, about the capacity that was found. */
final class CapacityCurve {
    /** Capacities evenly spaced; with those that are marked in a chart beside them. */
    private static final int POINTS = 17;

    /** From the capacity that so many coil changes do without more of, so that the curve is seen to rise. */
    private static final double FEW = 0.01;

    private final DoubleFunction<Optional<Evaluation>> trial;
    private final DoubleFunction<Size> size;
    private final double yearlyTime;

    /**
     * A curve of what {@code trial} gives.
     *
     * @param size of the accumulator of a capacity (m)
     * @param yearlyTime scheduled running time of a year (s)
     */
    CapacityCurve(DoubleFunction<Optional<Evaluation>> trial, DoubleFunction<Size> size, double yearlyTime) {
        this.trial = trial;
        this.size = size;
        this.yearlyTime = yearlyTime;
    }

    /** One point by itself. */
    Point point(double capacity) {
        return point(capacity, 0);
    }

    private Point point(double capacity, double envelope) {
        Optional<Evaluation> evaluation = trial.apply(capacity);
        double seen = evaluation.map(e -> (double) e.ranThrough() / e.changes()).orElse(0.0);
        return new Point(
                size.apply(capacity),
                evaluation.map(Evaluation::shareRunThrough),
                evaluation.map(e -> e.lostTime(yearlyTime)),
                Math.max(envelope, seen));
    }

    /** The curve about {@code found}, as far as the present capacity {@code now} (m) where that is not far off. */
    List<Point> about(Crossing found, StripDemand needs, double now) {
        double value = found.value().orElseThrow();
        double most = found.sure().orElse(value);
        double from = Math.min(Math.max(needs.quantile(FEW), value / 4), 0.9 * value);
        double to = Math.max(1.1 * most, Math.min(1.02 * needs.quantile(1), 1.5 * most));
        if (now > value / 4 && now < 2 * most) {
            from = Math.min(from, 0.98 * now);
            to = Math.max(to, 1.02 * now);
        }
        NavigableSet<Double> capacities = new TreeSet<>();
        for (int i = 0; i < POINTS; i++) {
            capacities.add(from + (to - from) * i / (POINTS - 1));
        }
        if (from <= now && now <= to) {
            capacities.add(now);
        }
        capacities.add(value);
        found.sure().ifPresent(capacities::add);
        found.possible().ifPresent(capacities::add);
        List<Point> points = new ArrayList<>();
        double envelope = 0;
        for (double capacity : capacities) {
            Point point = point(capacity, envelope);
            points.add(point);
            envelope = point.envelope();
        }
        return points;
    }
}
