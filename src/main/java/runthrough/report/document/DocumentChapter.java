package runthrough.report.document;

import java.util.List;
import runthrough.chart.Chart;
import runthrough.report.Table;

/**
 * A part of the document that is laid out like every other.
 *
 * @param id unique in the document; lower-case letters, digits and hyphens
 * @param title of its heading
 * @param lead what it says in words, a paragraph each
 * @param charts in order
 * @param tables in order
 * @param remarks how it was calculated, a paragraph each
 */
public record DocumentChapter(
        String id, String title, List<String> lead, List<Chart> charts, List<Table> tables, List<String> remarks) {

    public DocumentChapter {
        lead = List.copyOf(lead);
        charts = List.copyOf(charts);
        tables = List.copyOf(tables);
        remarks = List.copyOf(remarks);
    }
}
