/**
 * What every answer consists of: {@link runthrough.report.Answer}, its {@link runthrough.report.Headline}, {@link
 * runthrough.report.Figure}s and {@link runthrough.report.Table}s, which hold {@link runthrough.report.Value}s and not text,
 * and the {@link runthrough.report.JsonShape} of what machines get.
 *
 * <p>What is said of a study has a room of its own: {@code verdict}, {@code sizing}, {@code limits}, {@code speeds}, {@code
 * map}, {@code comparison}, {@code sensitivity}, {@code times}, {@code uncertainty}, {@code log}. A room turns a result into an
 * answer and enters no other room. {@code write} turns any answer into terminal text, a page, JSON and CSV, and knows no study;
 * {@code described} says what was given. {@code document} puts answers together.
 *
 * <p>Units: SI in; the user's units in everything that people read, the CSV files included, with the unit in the header; SI
 * with the unit in the name in JSON.
 *
 * <p>What every output keeps:
 *
 * <ul>
 *   <li>A number is written in one place, {@link runthrough.quantity.Notation}: the digits that its interval leaves certain,
 *       else three; what was described has all its digits. No text is read back to learn a number.
 *   <li>The same result gives the same bytes. No date is printed that was not given.
 *   <li>Text of the user is text everywhere: escaped in HTML and SVG, without control characters in the terminal, and no
 *       formula in a spreadsheet.
 *   <li>The HTML needs nothing from elsewhere and no script, and is well-formed XML, so that it can be made into other
 *       editions.
 * </ul>
 */
@NullMarked
package runthrough.report;

import org.jspecify.annotations.NullMarked;
