/**
 * Describes a line in code.
 *
 * <p>Main type: {@link runthrough.plant.builder.LineBuilder}. Units: SI.
 *
 * <p>Invariant: what is built has passed the checks of {@link runthrough.plant.check}.
 */
@NullMarked
package runthrough.plant.builder;

import org.jspecify.annotations.NullMarked;
