/**
 * What a run gives: records, and the error where it gives none.
 *
 * <p>Main types: {@link runthrough.simulation.records.Totals}, {@link runthrough.simulation.records.ChangeRecord}, {@link
 * runthrough.simulation.records.WorkRecord}, {@link runthrough.simulation.records.Trace}. All values are SI; NaN stands for
 * what did not happen. Nothing here can be changed.
 */
@NullMarked
package runthrough.simulation.records;

import org.jspecify.annotations.NullMarked;
