/** The drawing of a line: uncoilers, joiner, accumulator of any form, process section, to scale where lengths are known. */
@NullMarked
package runthrough.chart.line;

import org.jspecify.annotations.NullMarked;
