package runthrough.study.lever;

import java.util.OptionalDouble;

/**
 * A lever set to another value.
 *
 * @param lever that is set
 * @param present value of it, in the unit of {@link Lever.What}
 * @param value that it is set to
 * @param strand what a strand holds (m), where capacity comes in whole strands
 * @param part how much it is changed, as a part of what it is now, {@code >= 0}
 */
public record LeverChange(Lever lever, double present, double value, OptionalDouble strand, double part) {

    /** The one to the value of {@code answer}, which is enough, of a lever about which nobody asks how much it is changed. */
    public static LeverChange of(LeverAnswer answer) {
        return new LeverChange(
                answer.lever(), answer.present(), answer.value().orElseThrow(), answer.strand(), Double.NaN);
    }

    /** How much of it is changed (SI), {@code >= 0}. */
    public double amount() {
        return Math.abs(value - present);
    }
}
