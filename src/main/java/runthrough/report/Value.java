package runthrough.report;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.study.statistics.Interval;

/**
 * A number of an answer: what it is in SI, in which unit people read it, and how well it is known.
 *
 * @param si the number; not a number for none
 * @param notation how it is written
 * @param interval in which it lies; empty for an exact number and for one whose interval is not known
 * @param mark what people hold it against, such as a target: number and interval are written with the digits that show on which
 *     side of it they lie; empty for nothing
 */
public record Value(double si, Notation notation, Optional<Interval> interval, OptionalDouble mark) {

    /** A number that stands beside no other. */
    public Value(double si, Notation notation, Optional<Interval> interval) {
        this(si, notation, interval, OptionalDouble.empty());
    }

    /** More digits are not written to show on which side of a mark a number is. */
    private static final int MOST_DIGITS = 6;

    /** A number without an interval. */
    public static Value of(double si, Notation notation) {
        return new Value(si, notation, Optional.empty());
    }

    /** A count, or another number without a unit. */
    public static Value plain(double number) {
        return of(number, Notation.PLAIN);
    }

    /** A number that may be missing. */
    public static Value of(OptionalDouble si, Notation notation) {
        return of(si.orElse(Double.NaN), notation);
    }

    /** The same, held against {@code target} by those who read it. */
    public Value besides(double target) {
        return new Value(si, notation, interval, OptionalDouble.of(target));
    }

    /** Whether there is a number. */
    public boolean isThere() {
        return !Double.isNaN(si);
    }

    /** The number without its unit. */
    public String number() {
        return notation.number(si, half());
    }

    /** The number with its unit. */
    public String text() {
        return notation.text(si, half());
    }

    /** The number with its unit, to the digits that {@code other} has. */
    public String textLike(Value other) {
        return notation.text(si, other.half());
    }

    /** The sign of a number that is more than none as far as it is written; else nothing. */
    String plus() {
        return si > 0 && !Numbers.roundsToNothing(notation.value(si), notation.value(half())) ? "+" : "";
    }

    /** Its interval with the unit, such as "2.1 to 2.9 m" or "at most 0.3 m"; empty without one. */
    public Optional<String> range() {
        return interval.map(ends -> ends.method() == Interval.Method.RULE_OF_THREE
                ? "at most " + notation.text(ends.high(), ends.halfWidth())
                : notation.range(ends.low(), ends.high(), half()));
    }

    /** The same without the unit, for a place that names it. */
    public Optional<String> bareRange() {
        return interval.map(ends -> {
            return ends.method() == Interval.Method.RULE_OF_THREE
                    ? "at most " + notation.number(ends.high(), ends.halfWidth())
                    : notation.end(ends.low(), half()) + " to " + notation.end(ends.high(), half());
        });
    }

    /** The number and, in brackets, its interval: "98.1 % (97.6 to 98.4)". */
    public String known() {
        return text() + bareRange().map(ends -> " (" + ends + ")").orElse("");
    }

    /** Half the width of the interval; a tenth of it, or less, where the mark asks for more digits. 0 for no interval. */
    private double half() {
        double half = interval.map(Interval::halfWidth).orElse(0.0);
        for (int digits = 0; digits < MOST_DIGITS && half > 0 && hidesSide(half); digits++) {
            half /= 10;
        }
        return half;
    }

    private boolean hidesSide(double half) {
        return mark.isPresent()
                && (hidesSide(si, half)
                        || interval.filter(ends -> hidesSide(ends.low(), half) || hidesSide(ends.high(), half))
                                .isPresent());
    }

    private boolean hidesSide(double one, double half) {
        double other = mark.orElseThrow();
        return one != other && notation.number(one, half).equals(notation.number(other, half));
    }
}
