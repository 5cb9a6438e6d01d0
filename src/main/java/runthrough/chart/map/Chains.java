package runthrough.chart.map;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import runthrough.study.map.Field.Position;
import runthrough.study.map.Field.Segment;

/** Joins the pieces of a contour end to end, so that dashes run along it as along one line. */
final class Chains {
    private final Map<Position, Set<Segment>> at = new HashMap<>();
    private final Set<Segment> left;

    private Chains(List<Segment> pieces) {
        left = new LinkedHashSet<>(pieces);
        for (Segment piece : left) {
            at.computeIfAbsent(piece.from(), any -> new LinkedHashSet<>()).add(piece);
            at.computeIfAbsent(piece.to(), any -> new LinkedHashSet<>()).add(piece);
        }
    }

    /** The lines that {@code pieces} make, each from end to end. */
    static List<List<Position>> of(List<Segment> pieces) {
        Chains chains = new Chains(pieces);
        List<List<Position>> lines = new ArrayList<>();
        while (!chains.left.isEmpty()) {
            lines.add(chains.line(chains.left.iterator().next()));
        }
        return lines;
    }

    private List<Position> line(Segment first) {
        Deque<Position> line = new ArrayDeque<>(List.of(first.from(), first.to()));
        left.remove(first);
        for (Optional<Position> next = next(line.getLast()); next.isPresent(); next = next(line.getLast())) {
            line.addLast(next.get());
        }
        for (Optional<Position> next = next(line.getFirst()); next.isPresent(); next = next(line.getFirst())) {
            line.addFirst(next.get());
        }
        return List.copyOf(line);
    }

    /** The other end of a piece that is left at {@code end}. */
    private Optional<Position> next(Position end) {
        return at.getOrDefault(end, Set.of()).stream()
                .filter(left::remove)
                .findFirst()
                .map(piece -> piece.from().equals(end) ? piece.to() : piece.from());
    }
}
