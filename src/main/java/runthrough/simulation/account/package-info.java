/**
 * Keeps account of a run while it lasts: totals, coil changes, work elements, breakpoints.
 *
 * <p>Main types: {@link runthrough.simulation.account.RunStatistics} adds up; {@link runthrough.simulation.account.Recorder}
 * keeps what was asked for. Both see the line as a {@link runthrough.simulation.account.ObservedLine}, which nobody can move it by.
 * Units: SI.
 */
@NullMarked
package runthrough.simulation.account;

import org.jspecify.annotations.NullMarked;
