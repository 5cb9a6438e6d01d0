/**
 * Work as it was timed: a time-study sheet, one row for each coil change observed.
 *
 * <p>Main types: {@link runthrough.timestudy.TimeSheet}, its {@link runthrough.timestudy.TimedElement}s (columns) and {@link
 * runthrough.timestudy.Observation}s (rows).
 *
 * <p>Units: times in seconds, ratings as a share of standard performance (1 for a rating of 100). Invariants: every row has
 * a time or a gap (NaN) for every element; nothing here knows the file format, the line or how times are used.
 */
@NullMarked
package runthrough.timestudy;

import org.jspecify.annotations.NullMarked;
