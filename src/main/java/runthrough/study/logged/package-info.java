/**
 * Does the model fit the line? A log of the line is held against logs of the same length that the model gives, read by the same
 * rules.
 *
 * <p>Main types: {@link runthrough.study.logged.LogStudy} gives a {@link runthrough.study.logged.LogComparison}. Units: SI.
 * Invariants: the same scenario, log and seed give the same comparison, whatever the number of threads.
 */
@NullMarked
package runthrough.study.logged;

import org.jspecify.annotations.NullMarked;
