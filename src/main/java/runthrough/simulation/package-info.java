/**
 * Runs a described line through its coil changes, event by event.
 *
 * <p>Main types: {@link runthrough.simulation.LineSimulator} runs replications; {@link runthrough.simulation.Replication} is
 * what one gives. Behind them, {@code LineRun} owns everything of one replication; {@code LineState} holds speeds and level;
 * {@code ProcessControl}, {@code AccumulatedEntry} or {@code OneStripEntry}, {@code LevelWatch} and {@code ChangeWork} act
 * on it; {@code RunStatistics} and {@code ChangeBook} keep account. Units: SI.
 *
 * <h2>Motion</h2>
 *
 * <p>Accelerations are constant between events, so speeds are straight lines and levels parabolas. Nothing is stepped
 * through time: the next crossing of a threshold is the earliest root of a quadratic, found in closed form and put in the
 * calendar; whenever a plan changes it is computed anew. A missing acceleration makes the speed jump.
 *
 * <h2>Rules of event handling</h2>
 *
 * <ol>
 *   <li>At one instant: (1) ramps reach their target; (2) tail stopped, creep marks; (3) timers, in the order in which they
 *       were set; (4) own stop due; (5) new rated speed; (6) a coil change starts; (7) the settled level reaches the
 *       capacity; (8) starved; (9) slowed; (10) full speed resumed; (11) restart; (12) tail left its uncoiler; (13) end of a
 *       run of given time.
 *   <li>After each, plans are made anew, the process's before the entry's, so a later event sees what an earlier one did.
 *   <li>On arrival values are set exactly: a speed to its target, the remaining strip to 0 when the tail has stopped, the
 *       level to the capacity when the entry settled from filling.
 *   <li>A level is below a threshold when it is so by more than {@code 1e-10 max(1, C)}: a touch is no crossing.
 *   <li>What is watched lasts until the next event, that event's instant included.
 *   <li>More than 1000 events at one instant, or none left, is an error that says what went round or stood.
 * </ol>
 *
 * <h2>Random numbers</h2>
 *
 * <p>Each source of randomness has a stream of its own in each replication, numbered for good, and a draw costs one uniform
 * number: two lines run under the same seed see the same random numbers.
 *
 * <p>Invariants: strip entered = strip processed + change of level; the same seed and index give the same result on any
 * thread. No state is shared between replications.
 */
@NullMarked
package runthrough.simulation;

import org.jspecify.annotations.NullMarked;
