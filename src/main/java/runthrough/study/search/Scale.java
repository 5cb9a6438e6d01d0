package runthrough.study.search;

import runthrough.study.search.Crossing.Harder;

/**
 * Where along a number to search, and how finely.
 *
 * @param harder which of its values are harder on the line
 * @param from lower end of the range
 * @param to upper end of the range, {@code >= from}
 * @param reference what a distance is held against where the value's own amount is smaller, {@code >= 0}
 * @param step only multiples of it are tried, and the ends of the range, so that the way to a value does not matter to it,
 *     {@code > 0}
 */
public record Scale(Harder harder, double from, double to, double step, double reference) {
    /** What rounding does to a number of steps. */
    private static final double ROUNDING = 1e-6;

    public Scale {
        if (!(from <= to && Double.isFinite(from) && Double.isFinite(to))) {
            throw new IllegalArgumentException("search from " + from + " to " + to + "; must not be upside down");
        }
        if (!(step > 0 && step < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("step = " + step + "; must be more than 0");
        }
        if (!(reference >= 0)) {
            throw new IllegalArgumentException("reference = " + reference + "; must be 0 or more");
        }
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

    /** Whether nothing that lies between the two is worth a trial. */
    boolean areNeighbours(double good, double bad) {
        return below(good) <= bad + ROUNDING * step;
    }

    /** The step that is nearest to {@code ease}, or the end of the range. */
    double nearest(double ease) {
        return Math.min(Math.max(Math.rint(ease / step) * step, hardest()), easiest());
    }

    /** {@code ease}, or the nearest step that lies between {@code bad} and {@code good}, which are no neighbours; within the range. */
    double within(double ease, double bad, double good) {
        double multiple = Math.rint(ease / step) * step;
        double tried = multiple >= good ? below(good) : multiple <= bad ? above(bad) : multiple;
        return Math.min(Math.max(tried, hardest()), easiest());
    }

    private double below(double good) {
        return (Math.ceil(good / step - ROUNDING) - 1) * step;
    }

    private double above(double bad) {
        return (Math.floor(bad / step + ROUNDING) + 1) * step;
    }

    /** How far to step first from {@code ease}. */
    double firstStep(double part, double ease) {
        return Math.max(step, part * span(ease));
    }

    /** What a relative distance of 1 is at {@code ease}. */
    double span(double ease) {
        return Math.max(Math.abs(ease), reference);
    }
}
