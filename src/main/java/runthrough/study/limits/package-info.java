/**
 * How far can the line as it is be driven before it misses its target?
 *
 * <p>Main types: {@link runthrough.study.limits.LimitsStudy} (runs it), {@link runthrough.study.limits.Limits} (the answer), {@link runthrough.study.limits.LineLimit} (one number
 * driven to its limit).
 *
 * <p>Units: SI. Shares are in [0, 1].
 *
 * <p>Invariants: all variants of the line are tried under the same random numbers; the same line, plan and seed give the same answer,
 * whatever the number of threads.
 */
@NullMarked
package runthrough.study.limits;

import org.jspecify.annotations.NullMarked;
