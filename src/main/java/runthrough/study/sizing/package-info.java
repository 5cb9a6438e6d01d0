/**
 * How large must the accumulator be?
 *
 * <p>Main types: {@link runthrough.study.sizing.SizingStudy} (runs it), {@link runthrough.study.sizing.SizingOptions} (what is
 * asked), {@link runthrough.study.sizing.Sizing} (the answer). Behind them, {@code LongRunBalance} shows whether any capacity lasts,
 * {@code RemedySearch} what would help where none does, and {@code StripDemand} makes a good guess of one run.
 *
 * <p>Units: SI. Shares are in [0, 1].
 *
 * <p>Invariants: all capacities are tried under the same random numbers; the same line, plan and seed give the same answer, whatever
 * the number of threads. What is stated of a capacity was simulated with that capacity, or is known to be the same.
 */
@NullMarked
package runthrough.study.sizing;

import org.jspecify.annotations.NullMarked;
