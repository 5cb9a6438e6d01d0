/** The line as described, in words and tables, with every digit that was given. */
@NullMarked
package runthrough.report.described;

import org.jspecify.annotations.NullMarked;
