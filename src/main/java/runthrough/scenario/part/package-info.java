/**
 * Keys of parts of a line that stand by themselves: they are made of the grammar alone.
 *
 * <p>Main types: {@link runthrough.scenario.part.ShiftKeys} for the people by shifts, {@link runthrough.scenario.part.JointKeys} for
 * joints on their way, {@link runthrough.scenario.part.TravelKeys} for travel speeds by thickness, {@link runthrough.scenario.part.PracticeWord} for
 * the practice. Quantities are SI once read.
 */
@NullMarked
package runthrough.scenario.part;

import org.jspecify.annotations.NullMarked;
