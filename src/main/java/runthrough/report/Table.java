package runthrough.report;

import java.util.List;

/**
 * A table of a page.
 *
 * @param caption what it shows
 * @param head a heading for each column, all empty for none; the first column names the row
 * @param rows as many cells as columns each, as text
 * @param numbers whether the columns but the first hold numbers, to stand at the right
 */
public record Table(String caption, List<String> head, List<List<String>> rows, boolean numbers) {

    public Table {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != head.size()) {
                throw new IllegalArgumentException(
                        "row " + row + " of table \"" + caption + "\" needs " + head.size() + " cells");
            }
        }
    }

    /** Whether it is a list of names and values, without headings. */
    public boolean isPairs() {
        return head.stream().allMatch(String::isEmpty);
    }
}
