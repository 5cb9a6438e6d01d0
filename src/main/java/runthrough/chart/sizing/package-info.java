/** The chart of the share run through against the capacity of the accumulator. */
@NullMarked
package runthrough.chart.sizing;

import org.jspecify.annotations.NullMarked;
