/** The chart of how far each number of a line can be driven. */
@NullMarked
package runthrough.chart.limits;

import org.jspecify.annotations.NullMarked;
