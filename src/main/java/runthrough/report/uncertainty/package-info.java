/** What is said of times that are known from observations only: headline, figures, tables and JSON of the command {@code uncertainty}. */
@NullMarked
package runthrough.report.uncertainty;

import org.jspecify.annotations.NullMarked;
