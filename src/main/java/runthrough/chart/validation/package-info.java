/** The charts of the page of checks. */
@NullMarked
package runthrough.chart.validation;

import org.jspecify.annotations.NullMarked;
