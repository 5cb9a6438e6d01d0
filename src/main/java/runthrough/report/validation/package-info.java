/**
 * The page that shows why the numbers can be believed: every check of the program against the outside world, with its
 * source, from what the tests recorded while they ran.
 *
 * <p>Main types: {@link runthrough.report.validation.Recorded} (one line of a record: a number, a text or many errors held
 * against an outside value), {@link runthrough.report.validation.CheckFolder} (reads and writes the records), {@link
 * runthrough.report.validation.ValidationReport} (all of them as a page, and the same
 * for a terminal).
 *
 * <p>Units: each check names its own. What is shown of a number are the digits that its tolerance gives a meaning to, so that
 * the last bits, in which machines may differ, never change the page. The same records give the same bytes.
 *
 * <p>Whether a check has passed is worked out from its numbers here, and so is never a word that somebody wrote.
 */
@NullMarked
package runthrough.report.validation;

import org.jspecify.annotations.NullMarked;
