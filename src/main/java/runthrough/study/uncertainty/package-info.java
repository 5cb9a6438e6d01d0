/**
 * How well the answer is known when the times are known from a few observations only: the direct bootstrap. The sheets are
 * resampled row by row, as if other coil changes had been observed, and the line is run with each.
 *
 * <p>Main types: {@link runthrough.study.uncertainty.UncertaintyStudy} gives an {@link
 * runthrough.study.uncertainty.Uncertainty}.
 *
 * <p>Sources: R. R. Barton and L. W. Schruben, "Uniform and bootstrap resampling of empirical distributions", Winter Simulation
 * Conference 1993, and "Resampling methods for input modeling", 2001 (direct bootstrap of empirical distributions); R. C. H.
 * Cheng and W. Holland, "Sensitivity of computer simulation experiments to errors in input data", Journal of Statistical
 * Computation and Simulation 57, 1997 (the variance due to inputs and that due to the simulation add up). All from memory.
 *
 * <p>Units: SI. Invariants: the same scenario and seed give the same, whatever the number of threads.
 */
@NullMarked
package runthrough.study.uncertainty;

import org.jspecify.annotations.NullMarked;
