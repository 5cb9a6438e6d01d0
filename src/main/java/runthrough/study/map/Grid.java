package runthrough.study.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * The points of a map, refined level by level. A block between four points is split when the answer changes within it: when
 * the share is not about the same at its corners, when some meet the target and some do not, by simulation or by the closed
 * forms, or when a line is possible at some corners only.
 */
final class Grid {
    /** Shares that differ by less are about the same. */
    private static final double ABOUT = 0.15;

    private static final Comparator<Node> IN_ORDER =
            Comparator.comparingInt(Node::row).thenComparingInt(Node::column);

    private final MapPlan plan;
    private final double target;
    private final Map<Node, MapPoint> points = new TreeMap<>(IN_ORDER);
    private final List<Block> leaves = new ArrayList<>();
    private List<Block> blocks;
    private int waiting;

    Grid(MapPlan plan, double target) {
        this.plan = plan;
        this.target = target;
        this.blocks = coarse();
    }

    /** Where a point is: its column and row, from 0. */
    record Node(int column, int row) {}

    /** What lies between four points. */
    private record Block(int left, int bottom, int right, int top) {

        Stream<Node> corners() {
            return Stream.of(
                    new Node(left, bottom), new Node(right, bottom), new Node(left, top), new Node(right, top));
        }

        boolean canBeSplit() {
            return right - left > 1 || top - bottom > 1;
        }

        List<Block> split() {
            int column = (left + right) / 2;
            int row = (bottom + top) / 2;
            List<Block> parts = new ArrayList<>();
            for (int[] across :
                    right - left > 1 ? new int[][] {{left, column}, {column, right}} : new int[][] {{left, right}}) {
                for (int[] up :
                        top - bottom > 1 ? new int[][] {{bottom, row}, {row, top}} : new int[][] {{bottom, top}}) {
                    parts.add(new Block(across[0], up[0], across[1], up[1]));
                }
            }
            return parts;
        }
    }

    private List<Block> coarse() {
        List<Block> first = new ArrayList<>();
        for (int row = 0; row < plan.y().points() - 1; row += plan.stride()) {
            for (int column = 0; column < plan.x().points() - 1; column += plan.stride()) {
                first.add(new Block(
                        column,
                        row,
                        Math.min(column + plan.stride(), plan.x().points() - 1),
                        Math.min(row + plan.stride(), plan.y().points() - 1)));
            }
        }
        return first;
    }

    /** The points to be run next, none when the map is done; all of them must be added before this is asked again. */
    List<Node> due() {
        Set<Node> due = new LinkedHashSet<>();
        while (due.isEmpty() && !blocks.isEmpty()) {
            blocks.stream()
                    .flatMap(Block::corners)
                    .filter(node -> !points.containsKey(node))
                    .forEach(due::add);
            if (due.isEmpty()) {
                blocks = next();
            }
        }
        waiting = due.size();
        return due.stream().sorted(IN_ORDER).toList();
    }

    /** Splits the blocks in which the answer changes, and keeps the others as they are. */
    private List<Block> next() {
        List<Block> parts = new ArrayList<>();
        for (Block block : blocks) {
            if (block.canBeSplit() && changesIn(block)) {
                parts.addAll(block.split());
            } else {
                leaves.add(block);
            }
        }
        return parts;
    }

    private boolean changesIn(Block block) {
        List<MapPoint> corners = block.corners().map(points::get).toList();
        long possible =
                corners.stream().filter(point -> point.measured().isPresent()).count();
        if (possible < corners.size()) {
            return possible > 0;
        }
        double least = corners.stream().mapToDouble(MapPoint::share).min().orElseThrow();
        double greatest = corners.stream().mapToDouble(MapPoint::share).max().orElseThrow();
        boolean crosses = least < target && greatest >= target;
        long enoughByClosedForms = corners.stream()
                .filter(point -> point.marginByClosedForms() >= 0)
                .count();
        return crosses || greatest - least > ABOUT || (enoughByClosedForms > 0 && enoughByClosedForms < corners.size());
    }

    /** A point is done. */
    void add(MapPoint point) {
        points.put(new Node(point.column(), point.row()), point);
        waiting--;
    }

    /** How many points of those due are not done. */
    int waiting() {
        return waiting;
    }

    /** The points that were run, row by row from the bottom. */
    List<MapPoint> points() {
        return List.copyOf(points.values());
    }

    /** Shares run through, between the points that were run by their distance. */
    Field shares() {
        return field(MapPoint::share);
    }

    /** The margin by the closed forms. */
    Field closedForm() {
        return field(MapPoint::marginByClosedForms);
    }

    private Field field(ToDoubleFunction<MapPoint> number) {
        double[][] values = new double[plan.x().points()][plan.y().points()];
        leaves.forEach(block -> fill(block, number, values));
        points.forEach((node, point) -> values[node.column()][node.row()] = number.applyAsDouble(point));
        return new Field(values);
    }

    private void fill(Block block, ToDoubleFunction<MapPoint> number, double[][] values) {
        double[] corner = block.corners().map(points::get).mapToDouble(number).toArray();
        for (int column = block.left(); column <= block.right(); column++) {
            double across = (double) (column - block.left()) / (block.right() - block.left());
            for (int row = block.bottom(); row <= block.top(); row++) {
                double up = (double) (row - block.bottom()) / (block.top() - block.bottom());
                values[column][row] = (1 - up) * ((1 - across) * corner[0] + across * corner[1])
                        + up * ((1 - across) * corner[2] + across * corner[3]);
            }
        }
    }
}
