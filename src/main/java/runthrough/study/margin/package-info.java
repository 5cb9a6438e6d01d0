/**
 * What would have been left above the stop level at a coil change, had the process kept its speed: the margin, in metres, seconds
 * and speed, for each of the two targets.
 *
 * <p>Main type: {@link runthrough.study.margin.StripMargin}.
 */
@NullMarked
package runthrough.study.margin;

import org.jspecify.annotations.NullMarked;
