/**
 * Logs of a line: a CSV file with a row for each event, read into a {@link runthrough.linelog.LineLog}.
 *
 * <p>Main type: {@link runthrough.scenario.log.LineLogReader}. Units: whatever way the log gives the time becomes seconds here.
 * Invariants: a log is accepted whole or refused with everything that is wrong with it, each with file, line and column;
 * nothing that a file holds leads to an exception.
 */
@NullMarked
package runthrough.scenario.log;

import org.jspecify.annotations.NullMarked;
