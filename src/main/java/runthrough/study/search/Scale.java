package runthrough.study.search;

import runthrough.study.search.Crossing.Harder;

/**
 * Where along a number to search, and how finely.
 *
 * @param harder which of its values are harder on the line
 * @param from lower end of the range
 * @param to upper end of the range, {@code >= from}
 * @param precision two values closer than this, relatively, are not distinguished, {@code > 0}
 * @param reference what a distance is held against where the value's own amount is smaller, {@code >= 0}
 */
public record Scale(Harder harder, double from, double to, double precision, double reference) {

    public Scale {
        if (!(from <= to && Double.isFinite(from) && Double.isFinite(to))) {
            throw new IllegalArgumentException("search from " + from + " to " + to + "; must not be upside down");
        }
        if (!(precision > 0)) {
            throw new IllegalArgumentException("precision = " + precision + "; must be more than 0");
        }
        if (!(reference >= 0)) {
            throw new IllegalArgumentException("reference = " + reference + "; must be 0 or more");
        }
    }

    /** A scale on which a distance is held against the value itself. */
    public static Scale of(Harder harder, double from, double to, double precision) {
        return new Scale(harder, from, to, precision, 0);
    }

    /** How easy {@code value} is on the line: the larger, the easier. Its own inverse. */
    double ease(double value) {
        return harder == Harder.SMALLER ? value : 0 - value;
    }

    /** The ease of the hardest value of the range. */
    double hardest() {
        return Math.min(ease(from), ease(to));
    }

    /** The ease of the easiest value of the range. */
    double easiest() {
        return Math.max(ease(from), ease(to));
    }

    /** The distance from {@code ease} to {@code other}, {@code >= 0}, relative to the first. */
    double distance(double ease, double other) {
        return Math.abs(ease - other) / span(ease);
    }

    /** What a relative distance of 1 is at {@code ease}. */
    double span(double ease) {
        return Math.max(Math.abs(ease), reference);
    }
}
