/** The charts of a line log held against simulated logs. */
@NullMarked
package runthrough.chart.log;

import org.jspecify.annotations.NullMarked;
