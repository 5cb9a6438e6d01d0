/**
 * Quantities at the border: text with a unit in, text in the user's units out; SI doubles inside.
 *
 * <p>Main types: {@link runthrough.quantity.QuantityParser} reads {@code 45 m/min} into a {@link
 * runthrough.quantity.Quantity}; {@link runthrough.quantity.Units} writes SI values for people, by {@link
 * runthrough.quantity.Kind} and {@link runthrough.quantity.UnitSystem}; {@link runthrough.quantity.Unit} is the closed
 * table of all units; {@link runthrough.quantity.Numbers} writes plain numbers.
 *
 * <p>Invariants: a unit is never guessed, a number never depends on the machine's language, and a share that is neither 0
 * nor 1 is never shown as 0 % or 100 %.
 *
 * <p>Source of the factors: B. N. Taylor and A. Thompson, Guide for the Use of the International System of Units, NIST SP
 * 811 (2008), Appendix B.
 */
@NullMarked
package runthrough.quantity;

import org.jspecify.annotations.NullMarked;
