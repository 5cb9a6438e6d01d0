/** The charts of a time-study sheet: fitted distributions and their quantiles. */
@NullMarked
package runthrough.chart.times;

import org.jspecify.annotations.NullMarked;
