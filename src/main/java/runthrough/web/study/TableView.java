package runthrough.web.study;

import java.util.List;
import runthrough.report.Table;

/** A table as people are shown it; the headings of a list of names and values are empty. */
public record TableView(String caption, List<String> head, List<List<String>> rows) {
    public TableView {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }

    /** {@code table} as it is shown. */
    public static TableView of(Table table) {
        Table.Page page = table.page();
        return new TableView(page.caption(), page.head(), page.rows());
    }
}
