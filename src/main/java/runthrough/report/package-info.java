/**
 * What people and machines are given of a study: the terminal's text, the HTML report, JSON, CSV files.
 *
 * <p>Main types: {@link runthrough.report.verdict.RunThroughResult} (all that is reported), {@link
 * runthrough.report.verdict.TerminalReport}, {@link runthrough.report.verdict.HtmlReport}, {@link runthrough.report.verdict.JsonReport}, {@link
 * runthrough.report.verdict.CsvFiles}; {@link runthrough.report.verdict.ReportFolder} writes the files, all or none. A study other than the
 * verdict becomes a {@link runthrough.report.StudyAnswer}, from which its text, page, JSON and CSV files are made.
 *
 * <p>Units: SI in; the user's units in everything that people read, the CSV files included, with the unit in the header; SI
 * with the unit in the name in JSON.
 *
 * <p>What every output keeps:
 *
 * <ul>
 *   <li>Sentences and numbers are made in one place ({@code Headline}, {@code Diagnosis}, {@code Texts}), so that terminal,
 *       page and JSON never say different things. The template in {@code src/main/jte} lays out and holds the prose that does
 *       not depend on numbers.
 *   <li>Results have three digits, or as many as their interval leaves certain; what was described has all its digits.
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
