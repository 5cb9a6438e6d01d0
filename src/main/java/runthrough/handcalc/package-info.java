/**
 * The hand calculation: closed forms that an engineer can follow with a pocket calculator, beside the simulation.
 *
 * <p>Main types: {@link runthrough.handcalc.HandCalculation} (the whole of it for a line), {@link
 * runthrough.handcalc.ClosedForms} (the formulas for one coil at one speed, for any joint cycle time), {@link
 * runthrough.handcalc.Step} (one line of the worked calculation: symbol, formula, numbers, result).
 *
 * <p>Units: SI doubles; a {@link runthrough.quantity.Kind} says what each number is about, so that it can be shown in the
 * user's units.
 *
 * <p>Assumed throughout: the accumulator is full and the entry matched when a coil change begins; one rated speed; a joint
 * takes its mean time; the line has passed {@link runthrough.plant.check.LineCheck}. Where nothing is random and these
 * hold, the simulation gives the same numbers.
 *
 * <p>Sources: uniform acceleration, any text on elementary mechanics. Every formula is derived where it stands.
 */
@NullMarked
package runthrough.handcalc;

import org.jspecify.annotations.NullMarked;
