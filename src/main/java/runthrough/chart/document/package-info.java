/** The pictures of the document that is handed over: the line, the summary, the slide, and what a change is worth. */
@NullMarked
package runthrough.chart.document;

import org.jspecify.annotations.NullMarked;
