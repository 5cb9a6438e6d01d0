/**
 * How the strip moves: speeds, level, the entry section, the process section, and what is watched for.
 *
 * <p>Main types: {@link runthrough.simulation.motion.LineMotion} leads; {@code LineState} is what moves, with a {@code
 * StripEnd} each for entry and process; {@code ProcessControl}, {@code DowntimeControl} and {@code LevelWatch} are the process
 * section; {@code AccumulatedEntry}, with its table {@code EntryTransition}, or {@code OneStripEntry} is the entry section;
 * {@code RunOut} and {@code TailWatch} bring the tail to rest; {@code JointTracker} follows joints to the process. A {@code
 * StateEvent} is one condition that is watched, with its order, the time to it, and what follows. Units: SI.
 *
 * <p>Accelerations are constant between events, so speeds are straight lines and levels parabolas. Nothing is stepped through
 * time: the next crossing of a threshold is the earliest root of a quadratic, found in closed form and put in the calendar;
 * whenever a plan changes it is computed anew. A missing acceleration makes the speed jump.
 *
 * <p>Invariant: strip entered = strip processed + change of level.
 */
@NullMarked
package runthrough.simulation.motion;

import org.jspecify.annotations.NullMarked;
