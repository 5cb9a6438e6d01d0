package runthrough.plant;

/**
 * A strip hanging freely between two supports of equal height: {@code sag = a (cosh(S/2a) - 1)}, {@code arc = 2 a
 * sinh(S/2a)} over the span S, with the parameter a (m). Elementary statics; the strip's stiffness is neglected.
 *
 * <p>Rule ACC-3.
 */
public final class Catenary {

    private Catenary() {}

    /**
     * Length of strip (m) in a loop.
     *
     * @param span distance between the supports (m), {@code > 0}
     * @param sag depth below the supports (m), {@code >= 0}
     */
    public static double arc(double span, double sag) {
        if (sag == 0) {
            return span;
        }
        double u = halfSpanOverParameter(2 * sag / span);
        return span * Math.sinh(u) / u;
    }

    /**
     * Sag (m) of a loop that holds {@code arc} metres of strip: {@link #arc} turned round.
     *
     * @param span distance between the supports (m), {@code > 0}
     * @param arc length of strip (m); no more than the span, but for rounding, hangs straight
     */
    public static double sag(double span, double arc) {
        double u = shape(span, arc);
        if (u == 0) {
            return 0;
        }
        double half = Math.sinh(u / 2);
        return span * half * half / u;
    }

    /**
     * Half the span over the parameter, {@code S/2a}, of a loop that holds {@code arc} metres of strip: from 0, which is straight.
     *
     * @param span distance between the supports (m), {@code > 0}
     * @param arc length of strip (m); no more than the span, but for rounding, hangs straight
     */
    public static double shape(double span, double arc) {
        return arc > span ? halfSpanOverParameterOfArc(arc / span) : 0;
    }

    /**
     * The u = S/2a for which {@code sinh u / u = ratio}, {@code > 1}, by bisection: sinh u / u rises, from {@code 1 + u^2/6}
     * on, so that the root is no more than {@code sqrt(6 (ratio - 1))}.
     */
    private static double halfSpanOverParameterOfArc(double ratio) {
        double low = 0;
        double high = Math.sqrt(6 * (ratio - 1));
        while (true) {
            double middle = (low + high) / 2;
            if (!(low < middle && middle < high)) {
                return middle;
            }
            if (sinhExcess(middle) < ratio - 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    /** {@code sinh u / u - 1}, without losing its digits when u is small. */
    private static double sinhExcess(double u) {
        double square = u * u;
        return u < 0.1 ? square / 6 * (1 + square / 20 * (1 + square / 42 * (1 + square / 72))) : Math.sinh(u) / u - 1;
    }

    /** The u = S/2a for which {@code (cosh u - 1)/u = ratio}: Newton from above on a convex function, to full precision. */
    private static double halfSpanOverParameter(double ratio) {
        // cosh u - 1 = 2 sinh^2(u/2) keeps its digits when u is small. 2 ratio is the root of the parabola u/2 = ratio,
        // and above the true root, since (cosh u - 1)/u > u/2; Newton then falls towards the root, never past it.
        double u = Math.min(2 * ratio, 1 + Math.log(1 + 4 * ratio) * 2);
        double previous = Double.POSITIVE_INFINITY;
        while (u < previous) {
            previous = u;
            double half = Math.sinh(u / 2);
            double value = 2 * half * half / u - ratio;
            double slope = (Math.sinh(u) - 2 * half * half / u) / u;
            u -= value / slope;
        }
        return previous;
    }
}
