/**
 * Compares alternatives of a line with the one called today: what each would give, what the difference is, and whether it is
 * statistically significant.
 *
 * <p>Main types: {@link runthrough.study.comparison.ComparisonStudy} runs all alternatives; {@link
 * runthrough.study.comparison.Comparison} is what comes of it, with one {@link runthrough.study.comparison.Compared} for each;
 * {@link runthrough.study.comparison.ComparisonMeasure} says what is compared, in which unit, and what "better" is.
 *
 * <h2>The same random numbers</h2>
 *
 * <p>All alternatives are run under the same seed and with as many replications. Replication i of one is held against
 * replication i of the other: the same coils come, the same elements draw the same random numbers, so that random numbers which both
 * share do not blur the difference. What holds, to the end of the run and after any reject:
 *
 * <ul>
 *   <li>A source of random numbers keeps its numbers when another comes, goes or changes its distribution. A quicker weld, another accumulator or
 *       a second uncoiler meets the same coils and the same fit-up times.
 *   <li>An element of work keeps its numbers by its list and name, wherever it stands in the list. One that is called otherwise is
 *       another element, with other numbers.
 *   <li>Rethreading has numbers of its own: it shares the coils and the preparation with a line that joins.
 * </ul>
 *
 * None of this makes a difference wrong: replications stay independent of each other, so the pairs are, and the interval over
 * them is honest. Pairs that share fewer random numbers only make it wider.
 *
 * <h2>Pairs of different length</h2>
 *
 * <p>A run of so many coil changes takes longer where coil changes take longer, and an alternative may give its run another
 * length or other coils. What is compared is therefore per coil change or per time of its own replication, each replication
 * counting the same, whatever its length. Where nothing is random in one of the two, its one replication is held
 * against every one of the other; where nothing is in either, the difference is exact.
 *
 * <p>Units: SI; "per shift" is per 8 h of simulated time, a year is the scheduled running time that {@code RunPlan} states.
 */
@NullMarked
package runthrough.study.comparison;

import org.jspecify.annotations.NullMarked;
