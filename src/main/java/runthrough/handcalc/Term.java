package runthrough.handcalc;

import runthrough.quantity.Kind;

/**
 * A number in a formula.
 *
 * @param symbol such as {@code d_e}
 * @param name such as "entry deceleration"
 * @param value (SI); may be infinite
 * @param kind what it is about
 */
public record Term(String symbol, String name, double value, Kind kind) {}
