/**
 * How large must the accumulator be?
 *
 * <p>Main types: {@link runthrough.study.sizing.Sizing} (the answer).
 *
 * <p>Units: SI. Shares are in [0, 1].
 *
 * <p>Invariants: all capacities are tried under the same luck; the same line, plan and seed give the same answer, whatever
 * the number of threads.
 */
@NullMarked
package runthrough.study.sizing;

import org.jspecify.annotations.NullMarked;
