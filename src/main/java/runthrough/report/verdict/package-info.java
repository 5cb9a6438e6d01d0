/** What is said of a verdict: headline, figures, tables and JSON of the command {@code run}. */
@NullMarked
package runthrough.report.verdict;

import org.jspecify.annotations.NullMarked;
