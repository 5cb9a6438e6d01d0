/** What is said of alternatives: headline, figures, tables and JSON of the command {@code compare}. */
@NullMarked
package runthrough.report.comparison;

import org.jspecify.annotations.NullMarked;
