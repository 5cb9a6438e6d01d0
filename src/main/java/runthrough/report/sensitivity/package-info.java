/** What is said of inputs and sources of randomness: headline, figures, tables and JSON of the command {@code sensitivity}. */
@NullMarked
package runthrough.report.sensitivity;

import org.jspecify.annotations.NullMarked;
