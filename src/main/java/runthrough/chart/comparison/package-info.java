/** The charts of alternatives: what each gives, and what it gains over the one called today. */
@NullMarked
package runthrough.chart.comparison;

import org.jspecify.annotations.NullMarked;
