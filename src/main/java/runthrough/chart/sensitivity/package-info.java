/** The charts of a sensitivity study: swings of the inputs, and shares of variance by source of randomness. */
@NullMarked
package runthrough.chart.sensitivity;

import org.jspecify.annotations.NullMarked;
