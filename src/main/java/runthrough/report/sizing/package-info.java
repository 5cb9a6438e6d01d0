/** What is said of the size of an accumulator: headline, figures, tables and JSON of the command {@code size}. */
@NullMarked
package runthrough.report.sizing;

import org.jspecify.annotations.NullMarked;
