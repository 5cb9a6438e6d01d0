/**
 * Writers that know answers and no study: {@link runthrough.report.write.TerminalWriter}, {@link
 * runthrough.report.write.JsonWriter}, {@link runthrough.report.write.HtmlWriter}, {@link runthrough.report.write.CsvWriter};
 * {@link runthrough.report.write.FolderWriter} writes the files of an answer, all or none.
 */
@NullMarked
package runthrough.report.write;

import org.jspecify.annotations.NullMarked;
