/**
 * A sweep as lines of text, one for each case, in JSON or CSV. A line stands by itself: it names its sweep, its number and how many
 * cases there are, and ends with a check sum. So a file that was cut short by a kill is gone on with ({@link
 * runthrough.report.sweep.SweepFile}), and the files of several machines are put together again ({@link
 * runthrough.report.sweep.Merge}).
 */
@NullMarked
package runthrough.report.sweep;

import org.jspecify.annotations.NullMarked;
