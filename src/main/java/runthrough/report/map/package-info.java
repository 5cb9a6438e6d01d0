/** What is said of a map over two numbers of a line: headline, figures, tables and JSON of the command {@code map}. */
@NullMarked
package runthrough.report.map;

import org.jspecify.annotations.NullMarked;
