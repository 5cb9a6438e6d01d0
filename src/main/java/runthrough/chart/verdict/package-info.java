/** The charts of a verdict: level and speeds over time, a coil change in close-up, joint cycle times, margins, strip drawn, products. */
@NullMarked
package runthrough.chart.verdict;

import org.jspecify.annotations.NullMarked;
