package runthrough.study.map;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A number over a map, known at evenly spaced points and straight along the lines between them. NaN where there is none.
 * Positions are counted in points: 0 at the left and at the bottom.
 */
public final class Field {
    private final double[][] values;

    /** A field of {@code values} by column, then row; at least two of each. */
    Field(double[][] values) {
        this.values = values;
    }

    /** A position in points. */
    public record Position(double x, double y) {}

    /** A piece of a contour. */
    public record Segment(Position from, Position to) {}

    /** How many points from left to right. */
    public int columns() {
        return values.length;
    }

    /** How many points from bottom to top. */
    public int rows() {
        return values[0].length;
    }

    /** The number at a point; NaN where there is none. */
    public double at(int column, int row) {
        return values[column][row];
    }

    /** The number at any position on the map; NaN where a point about it has none. */
    public double at(double x, double y) {
        int column = Math.min((int) x, columns() - 2);
        int row = Math.min((int) y, rows() - 2);
        double across = x - column;
        double up = y - row;
        return between(
                between(at(column, row), at(column + 1, row), across),
                between(at(column, row + 1), at(column + 1, row + 1), across),
                up);
    }

    /** Exactly the nearer one at an end, even when the other is NaN. */
    private static double between(double one, double other, double part) {
        return part == 0 || one == other ? one : part == 1 ? other : one + part * (other - one);
    }

    /** The outline of the part of the square above and to the right of a point where the number is at least {@code level}. */
    public List<Position> part(int column, int row, double level) {
        Position[] corners = corners(column, row);
        List<Position> outline = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            double here = at(corners[i]);
            double next = at(corners[(i + 1) % corners.length]);
            if (Double.isNaN(here)) {
                return List.of();
            }
            if (here >= level) {
                outline.add(corners[i]);
            }
            if (here >= level != next >= level) {
                outline.add(crossing(corners[i], here, corners[(i + 1) % corners.length], next, level));
            }
        }
        return outline;
    }

    /** Where the number passes {@code level}, in pieces, square by square. */
    public List<Segment> contour(double level) {
        List<Segment> pieces = new ArrayList<>();
        for (int row = 0; row < rows() - 1; row++) {
            for (int column = 0; column < columns() - 1; column++) {
                addContour(column, row, level, pieces);
            }
        }
        return pieces;
    }

    private void addContour(int column, int row, double level, List<Segment> pieces) {
        Position[] corners = corners(column, row);
        List<Position> crossings = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            double here = at(corners[i]);
            double next = at(corners[(i + 1) % corners.length]);
            if (Double.isNaN(here) || Double.isNaN(next)) {
                return;
            }
            if (here >= level != next >= level) {
                crossings.add(crossing(corners[i], here, corners[(i + 1) % corners.length], next, level));
            }
        }
        // Of four crossings those are joined between which the number is at least the level, as in the outline of the
        // part.
        boolean startsBelow = crossings.size() == 4 && at(corners[0]) < level;
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            int first = startsBelow ? i + 1 : i;
            pieces.add(new Segment(crossings.get(first), crossings.get((first + 1) % crossings.size())));
        }
    }

    /** Anticlockwise from below on the left. */
    private static Position[] corners(int column, int row) {
        return new Position[] {
            new Position(column, row),
            new Position(column + 1, row),
            new Position(column + 1, row + 1),
            new Position(column, row + 1)
        };
    }

    private double at(Position point) {
        return at((int) point.x(), (int) point.y());
    }

    /** Always calculated from the same end, so that neighbouring squares agree to the last bit. */
    private static Position crossing(Position one, double there, Position other, double here, double level) {
        boolean swapped = one.x() > other.x() || one.y() > other.y();
        if (swapped) {
            return crossing(other, here, one, there, level);
        }
        double part = part(there, here, level);
        return new Position(one.x() + part * (other.x() - one.x()), one.y() + part * (other.y() - one.y()));
    }

    /** How far on the way from {@code there} to {@code here} the number passes {@code level}; an endless one is far from any level. */
    private static double part(double there, double here, double level) {
        if (Double.isInfinite(there)) {
            return Double.isInfinite(here) ? 0.5 : 1;
        }
        return Double.isInfinite(here) ? 0 : (level - there) / (here - there);
    }

    /** The share of the map, by area, where the number is at least {@code level}, in [0, 1]. */
    public double shareOfAtLeast(double level) {
        double area = 0;
        for (int row = 0; row < rows() - 1; row++) {
            for (int column = 0; column < columns() - 1; column++) {
                area += area(part(column, row, level));
            }
        }
        return area / ((columns() - 1) * (rows() - 1));
    }

    /** The share of the map where there is a number. */
    public double shareKnown() {
        return shareOfAtLeast(Double.NEGATIVE_INFINITY);
    }

    private static double area(List<Position> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Position here = outline.get(i);
            Position next = outline.get((i + 1) % outline.size());
            twice += here.x() * next.y() - next.x() * here.y();
        }
        return twice / 2;
    }

    /**
     * The nearest position at which the number passes {@code level}, going from a position along x ({@code stepX} of 1 or -1)
     * or along y ({@code stepY}); empty when it does not before the edge of the map or of what is known.
     */
    OptionalDouble passing(Position from, int stepX, int stepY, double level) {
        double start = stepX != 0 ? from.x() : from.y();
        int step = stepX + stepY;
        double edge = step < 0 ? 0 : (stepX != 0 ? columns() : rows()) - 1;
        double here = at(from.x(), from.y());
        double position = start;
        while (position != edge && !Double.isNaN(here)) {
            double next = step < 0 ? Math.max(edge, Math.ceil(position) - 1) : Math.min(edge, Math.floor(position) + 1);
            double there = stepX != 0 ? at(next, from.y()) : at(from.x(), next);
            if (here >= level != there >= level && !Double.isNaN(there)) {
                return OptionalDouble.of(position + part(here, there, level) * (next - position));
            }
            here = there;
            position = next;
        }
        return OptionalDouble.empty();
    }
}
