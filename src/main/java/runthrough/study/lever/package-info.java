/**
 * What would meet the target: of each thing that can be varied by itself, the smallest change with which the target is shown to be
 * met. The question is answered here and nowhere else, so that every command gives the same number.
 *
 * <p>Main types: {@link runthrough.study.lever.LeverStudy} (runs it), {@link runthrough.study.lever.Lever} (what is varied), {@link
 * runthrough.study.lever.LeverAnswer} (what came out), {@link runthrough.study.lever.LeverSearch} (finds one number). {@link
 * runthrough.study.lever.WorthStudy} says what it would be worth to remove each cause.
 *
 * <p>Units: SI, those given at {@link runthrough.study.lever.Lever.What}. Shares are in [0, 1].
 *
 * <p>Invariants: every value is tried under the same random numbers, with the replications of the plan.
 */
@NullMarked
package runthrough.study.lever;

import org.jspecify.annotations.NullMarked;
