/**
 * Runs a line as often as asked and draws the verdict: does it run through its coil changes?
 *
 * <p>Main types: {@link runthrough.study.RunThroughStudy} (runs the replications over threads), {@link
 * runthrough.study.StudyResult} (all that people and machines are shown), {@link runthrough.study.Verdict} (the answer).
 * Questions about variants of a line, in the packages below this one, are put to an {@link runthrough.study.Evaluator}, which
 * keeps an {@link runthrough.study.Evaluation} of each.
 *
 * <p>Units: SI; rates are "per shift", a shift being 8 h of simulated time. Shares are in [0, 1].
 *
 * <p>Invariants: the same line, plan and seed give the same result, whatever the number of threads; results are taken in
 * order of the replications' index. Nothing here is prose: the answer is enum values with their numbers.
 */
@NullMarked
package runthrough.study;

import org.jspecify.annotations.NullMarked;
