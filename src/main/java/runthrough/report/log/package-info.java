/** What is said of a model held against a log of the line: headline, figures, tables and JSON of the command {@code log}. */
@NullMarked
package runthrough.report.log;

import org.jspecify.annotations.NullMarked;
