/** What is said of process speeds: headline, figures, tables and JSON of the command {@code speeds}. */
@NullMarked
package runthrough.report.speeds;

import org.jspecify.annotations.NullMarked;
