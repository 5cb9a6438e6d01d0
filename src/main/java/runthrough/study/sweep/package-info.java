/**
 * Many cases of one line, each with its own values of some inputs: named one by one, as a grid, or filling a space evenly. Cases
 * are numbered from 1 and stand by themselves, so that machines may share them ({@link runthrough.study.sweep.Shard}). All use
 * the seed of the scenario, so that they see the same random numbers, unless a case sets another. A case that cannot be run says
 * why and stops no other.
 *
 * <p>The study knows neither scenario nor file: from a case to what is asked it is given a function.
 */
@NullMarked
package runthrough.study.sweep;

import org.jspecify.annotations.NullMarked;
