/** The map of the share run through over two numbers of a line. */
@NullMarked
package runthrough.chart.map;

import org.jspecify.annotations.NullMarked;
