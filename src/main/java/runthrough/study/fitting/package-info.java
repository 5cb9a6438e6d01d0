/**
 * Distributions fitted to measured times: lognormal, gamma, Weibull, exponential, normal and triangular, most of them also shifted.
 *
 * <p>Main types: {@link runthrough.study.fitting.Durations} (the times), {@link runthrough.study.fitting.MaximumLikelihood},
 * {@link runthrough.study.fitting.FittedDistribution} and its {@link runthrough.study.fitting.FittedNumbers}, {@link
 * runthrough.study.fitting.GoodnessOfFit}, {@link runthrough.study.fitting.FittingStudy}, {@link runthrough.study.fitting.Recommendation}.
 *
 * <p>Units: seconds. Invariants: every fitted distribution can be written into a scenario as it is; whether it fits is judged against
 * samples drawn from it, fitted anew and rounded as the watch was read, never by tables for known parameters; the same times
 * and seed give the same numbers.
 *
 * <p>Optimisers and solvers are Hipparchus', densities and distribution functions Commons Statistics'.
 */
@NullMarked
package runthrough.study.fitting;

import org.jspecify.annotations.NullMarked;
