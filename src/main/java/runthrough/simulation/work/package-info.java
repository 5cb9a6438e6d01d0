/**
 * The work of a coil change: who does which element when, and joints that are made again.
 *
 * <p>Main types: {@link runthrough.simulation.work.ChangeWork} decides what begins; {@link
 * runthrough.simulation.work.WorkLists} holds the elements with their random numbers; {@link
 * runthrough.simulation.work.JointPasses} counts passes and crops. It knows nothing of how the strip moves. Units: SI.
 */
@NullMarked
package runthrough.simulation.work;

import org.jspecify.annotations.NullMarked;
