/**
 * Time-study sheets: a CSV file as it comes from a stopwatch, read into a {@link runthrough.timestudy.TimeSheet}.
 *
 * <p>Main types: {@link runthrough.scenario.times.TimeSheetReader}, and {@link runthrough.scenario.times.TimeSheetReading},
 * which is what comes of it. Commas, semicolons or tabs between columns; decimal points, or decimal commas where the columns
 * are not separated by commas; times with or without unit, or as a clock shows them.
 *
 * <p>Units: whatever the sheet uses becomes seconds here. Invariants: a sheet is accepted whole or refused with everything
 * that is wrong with it, each with file, line and column; nothing that a file holds leads to an exception.
 */
@NullMarked
package runthrough.scenario.times;

import org.jspecify.annotations.NullMarked;
