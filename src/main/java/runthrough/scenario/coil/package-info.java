/**
 * Which coils come: one kind, a random mix, or a schedule in a file of its own; their keys, and the reading of them.
 *
 * <p>Main type: {@link runthrough.scenario.coil.CoilSourceReader}. Quantities are SI once read.
 */
@NullMarked
package runthrough.scenario.coil;

import org.jspecify.annotations.NullMarked;
