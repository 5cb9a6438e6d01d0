package runthrough.chart.verdict;

import java.util.ArrayList;
import java.util.List;
import runthrough.simulation.records.ChangeRecord;
import runthrough.simulation.records.Trace;

/**
 * A stretch of a trace that is to be drawn.
 *
 * @param pieces of constant acceleration, in order of time, cut at the ends of the stretch
 * @param changes coil changes of which any part lies in it
 * @param from start (s)
 * @param to end (s), {@code > from}
 */
record TraceWindow(List<Piece> pieces, List<ChangeRecord> changes, double from, double to) {

    TraceWindow {
        pieces = List.copyOf(pieces);
        changes = List.copyOf(changes);
        if (!(to > from)) {
            throw new IllegalArgumentException("stretch from " + from + " s to " + to + " s; must end after it begins");
        }
    }

    /**
     * Part of the time between two points of a trace.
     *
     * @param start the point it belongs to
     * @param begin seconds after that point, {@code >= 0}
     * @param end seconds after that point, {@code >= begin}
     */
    record Piece(Trace.Point start, double begin, double end) {}

    /** The stretch of {@code trace} from {@code from} to {@code to} (s), as far as the trace goes. */
    static TraceWindow of(Trace trace, List<ChangeRecord> changes, double from, double to) {
        List<Trace.Point> points = trace.points();
        double first = Math.max(from, points.get(0).time());
        double last = Math.min(to, points.get(points.size() - 1).time());
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            Trace.Point point = points.get(i);
            double next = points.get(i + 1).time();
            if (next >= first && point.time() <= last && next > point.time()) {
                pieces.add(new Piece(point, Math.max(0, first - point.time()), Math.min(next, last) - point.time()));
            }
        }
        List<ChangeRecord> within = changes.stream()
                .filter(change -> change.released() > first && change.start() < last)
                .toList();
        return new TraceWindow(pieces.stream().filter(p -> p.end() > p.begin()).toList(), within, first, last);
    }

    /** Length of the stretch (s). */
    double span() {
        return to - from;
    }
}
