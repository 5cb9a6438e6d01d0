/** The chart of output and share against process speed. */
@NullMarked
package runthrough.chart.speeds;

import org.jspecify.annotations.NullMarked;
