/** What is said of the limits of a line: headline, figures, tables and JSON of the command {@code limits}. */
@NullMarked
package runthrough.report.limits;

import org.jspecify.annotations.NullMarked;
