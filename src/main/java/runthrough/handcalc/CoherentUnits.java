package runthrough.handcalc;

import java.util.Optional;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;
import runthrough.quantity.Unit;
import runthrough.quantity.UnitSystem;

/**
 * Numbers in units in which formulas add up as they stand, without factors: metres or feet, seconds, kilograms or pounds,
 * and what follows from them. A worked calculation with its numbers put in must use these; {@code 45 m/min * 90 s} is not
 * 4050 of anything.
 *
 * @param system the units that the user reads
 */
public record CoherentUnits(UnitSystem system) {
    /** Enough for a reader's pocket calculator to come to the same four. */
    private static final int DIGITS = 6;

    /** The unit of {@code kind}; none for shares, which multiply as they are. */
    public Optional<Unit> unit(Kind kind) {
        boolean metric = system == UnitSystem.METRIC;
        return switch (kind) {
            case LENGTH, THICKNESS, WIDTH, DIAMETER -> Optional.of(metric ? Unit.METRE : Unit.FOOT);
            case SPEED, TRAVEL_SPEED, RATE_LENGTH -> Optional.of(metric ? Unit.METRE_PER_SECOND : Unit.FOOT_PER_SECOND);
            case ACCELERATION -> Optional.of(metric ? Unit.METRE_PER_SECOND_SQUARED : Unit.FOOT_PER_SECOND_SQUARED);
            case TIME -> Optional.of(Unit.SECOND);
            case MASS -> Optional.of(metric ? Unit.KILOGRAM : Unit.POUND);
            case DENSITY -> Optional.of(metric ? Unit.KILOGRAM_PER_CUBIC_METRE : Unit.POUND_PER_CUBIC_FOOT);
            case SHARE -> Optional.empty();
            case STRESS, RATE_MASS, FORCE, TORQUE, POWER ->
                throw new IllegalArgumentException(kind + " does not occur in a worked calculation");
        };
    }

    /** The number alone, as it goes into a formula. */
    public String number(Term term) {
        double value = unit(term.kind()).map(unit -> unit.fromSi(term.value())).orElse(term.value());
        return Numbers.text(value, DIGITS);
    }

    /** The number and its unit. */
    public String text(Term term) {
        boolean bare = !Double.isFinite(term.value());
        return number(term)
                + (bare
                        ? ""
                        : unit(term.kind()).map(unit -> " " + unit.symbol()).orElse(""));
    }

    /** The formula of {@code step} with its numbers put in. */
    public String numbers(Step step) {
        return step.fill(this::number);
    }
}
