/**
 * What front doors share of studies: how far numbers are moved to see what they change ({@link
 * runthrough.web.study.UsualSwings}), and an answer as the page shows it ({@link runthrough.web.study.StudyView}).
 *
 * <p>Numbers are SI; what is shown is text in the units of the answer.
 */
@NullMarked
package runthrough.web.study;

import org.jspecify.annotations.NullMarked;
