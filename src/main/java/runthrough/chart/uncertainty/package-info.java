/** The charts of what measured times leave uncertain. */
@NullMarked
package runthrough.chart.uncertainty;

import org.jspecify.annotations.NullMarked;
