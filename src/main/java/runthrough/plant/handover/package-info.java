/**
 * What a scenario says for the document that is handed over, beside the line itself: its cover, what its drive can do, where
 * values came from, and what time and strip are worth. None of it changes a simulation.
 *
 * <p>Main type: {@link runthrough.plant.handover.Handover}. Units: SI; money in the user's own currency, whose name is text.
 */
@NullMarked
package runthrough.plant.handover;

import org.jspecify.annotations.NullMarked;
