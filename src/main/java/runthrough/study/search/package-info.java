/**
 * Finds where along one number of a line its target is lost.
 *
 * <p>Main types: {@link runthrough.study.search.TargetSearch} (searches), {@link runthrough.study.search.Scale} (where, and how
 * finely), {@link runthrough.study.search.Crossing} (what was found).
 *
 * <p>Units: SI, those of the number that is changed. Shares are in [0, 1].
 *
 * <p>Invariants: every value is tried under the same random numbers, so that two values differ by what they do and not by what they
 * were dealt; what is tried next depends on what was seen, never on the number of threads.
 */
@NullMarked
package runthrough.study.search;

import org.jspecify.annotations.NullMarked;
