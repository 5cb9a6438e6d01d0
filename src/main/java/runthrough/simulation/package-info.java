/**
 * Runs a described line through its coil changes, event by event.
 *
 * <p>Main types: {@link runthrough.simulation.LineSimulator} runs replications; {@link runthrough.simulation.Replication} is
 * what one gives. Behind them {@code LineRun} leads one replication through the rooms, each a package:
 *
 * <ul>
 *   <li>{@link runthrough.simulation.calendar}: the clock, and the order of simultaneous events.
 *   <li>{@link runthrough.simulation.motion}: speeds and level, entry section, process section, what is watched for.
 *   <li>{@link runthrough.simulation.work}: people, elements of work, joints that are made again.
 *   <li>{@link runthrough.simulation.random}: random numbers, and what is drawn with them.
 *   <li>{@link runthrough.simulation.account}: totals and records while the run lasts; it sees the line and never moves it.
 *   <li>{@link runthrough.simulation.records}: what a run gives.
 * </ul>
 *
 * <p>Motion and work know nothing of each other; {@code LineRun} passes T0, T1 and T2 from one to the other. The
 * rules, with their identifiers, stand in {@code src/docs/model.md}; the class that implements a rule names it. Units: SI.
 *
 * <p>Invariants: the same seed and index give the same result on any thread. No state is shared between replications.
 */
@NullMarked
package runthrough.simulation;

import org.jspecify.annotations.NullMarked;
