/**
 * What  shows: the times of each element, outliers, a trend, elements that are slow together, and how many
 * observations it takes.
 *
 * <p>Main types: {@link runthrough.study.times.SheetStatistics}, {@link runthrough.study.times.ElementTimes}, {@link
 * runthrough.study.times.Outliers}, {@link runthrough.study.times.Trend}, {@link runthrough.study.times.Correlation}, {@link
 * runthrough.study.times.JointTail}, {@link runthrough.study.times.SampleSize}.
 *
 * <p>Units: seconds; a slope in seconds per coil change. Invariants: nothing is ever left out silently, gaps apart; the same
 * sheet and seed give the same numbers. Each class names the book or paper that its rule comes from.
 */
@NullMarked
package runthrough.study.times;

import org.jspecify.annotations.NullMarked;
