/**
 * The described line: coils, entry section, accumulator, process section, the work of a coil change, and how long to
 * run it.
 *
 * <p>Main types: {@link runthrough.plant.SimulationRequest} (what was asked), {@link runthrough.plant.Line} (the line itself), {@link
 * runthrough.plant.check.LineCheck} (what is refused and what is warned of before anything runs).
 *
 * <p>Units: SI throughout, as plain doubles: metres, seconds, metres per second, kilograms. A missing acceleration is
 * {@link Double#POSITIVE_INFINITY}: the speed changes at once. A missing limit is positive infinity too. A threshold that
 * takes its default is {@link Double#NaN} in the description and resolved by the type that owns it.
 *
 * <p>Invariants: records are immutable and check their own ranges; what relates one part of the line to another is checked
 * by {@code LineCheck}. Nothing here knows of files, events or charts.
 */
@NullMarked
package runthrough.plant;

import org.jspecify.annotations.NullMarked;
