/** What is said of what would meet the target: the same words and numbers for every command, document and page. */
@NullMarked
package runthrough.report.lever;

import org.jspecify.annotations.NullMarked;
