/**
 * The document that is handed over and filed: a decision page, the line as drawn, method, hand calculation, results,
 * equipment, worth, inputs and where they came from, as HTML and as PDF.
 *
 * <p>Main types: {@link runthrough.report.document.Document} (what it says), {@link
 * runthrough.report.document.Edition} (screen, or pages of a size), {@link runthrough.report.document.DocumentHtml} (the
 * one template), {@link runthrough.report.document.DocumentPdf} (its pages), {@link
 * runthrough.report.document.DocumentFiles} (all files).
 *
 * <p>Units: values are SI, written in the user's units.
 *
 * <p>What both editions keep: they come from the same template and say the same. Text of the user is text everywhere, and
 * what XML cannot hold is replaced. The PDF is tagged, names its language and title, and has an alternative text for every
 * drawing; its drawings are vectors and their text is text. The same input gives the same bytes: the PDF's date is fixed and
 * its identifier follows from its content.
 */
@NullMarked
package runthrough.report.document;

import org.jspecify.annotations.NullMarked;
