/**
 * Quantities at the border: text with a unit in, text in the user's units out; SI doubles inside.
 *
 * <p>Main types: {@link runthrough.quantity.UnitSystem}.
 */
@NullMarked
package runthrough.quantity;

import org.jspecify.annotations.NullMarked;
