/** What is said of a time-study sheet: headline, figures, tables and JSON of the command {@code times}. */
@NullMarked
package runthrough.report.times;

import org.jspecify.annotations.NullMarked;
