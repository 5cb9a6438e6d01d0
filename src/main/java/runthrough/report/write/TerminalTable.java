package runthrough.report.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.report.Column;
import runthrough.report.KeptTogether;
import runthrough.report.Table;
import runthrough.report.TextLines;

/**
 * A table as lines of a terminal: columns as wide as their widest cell, numbers at the right. In a table that is too wide,
 * headings, names and words take several lines; where it is still too wide, its columns are divided into blocks, each of which
 * names the rows again.
 */
final class TerminalTable {
    private static final String BETWEEN = "  ";
    private static final int SHORT_NAME = 22;
    /** Where a row has two names. */
    private static final int SHORT_NAMES = 20;

    private static final int SHORT_WORDS = 16;
    private static final int SHORT_HEADING = 9;

    private final List<Column> columns;
    private final List<String> head;
    private final List<List<String>> rows;
    private final TextLines lines;

    private TerminalTable(Table.Page table, TextLines lines) {
        this.columns = table.columns();
        this.head = table.columns().stream().map(TerminalTable::heading).toList();
        this.rows = table.rows();
        this.lines = lines;
    }

    static void write(Table.Page table, TextLines lines) {
        new TerminalTable(table, lines).write();
    }

    private void write() {
        List<Integer> all = IntStream.range(0, columns.size()).boxed().toList();
        int[] widths = all.stream().mapToInt(this::natural).toArray();
        if (width(all, widths) <= TextLines.WIDTH) {
            block(all, widths);
            return;
        }
        List<Integer> names = names();
        all.stream().filter(this::isWords).forEach(column -> widths[column] = narrow(column, names));
        if (width(all, widths) > TextLines.WIDTH) {
            all.forEach(column -> widths[column] = narrow(column, names));
        }
        List<List<Integer>> blocks = balanced(names, widths);
        for (int name : names) {
            while (widths[name] < natural(name) && fit(blocks, with(widths, name))) {
                widths[name]++;
            }
        }
        for (int i = 0; i < blocks.size(); i++) {
            if (i > 0) {
                lines.gap();
            }
            block(blocks.get(i), widened(blocks.get(i), widths, names));
        }
    }

    /** The widths with one more for {@code column}. */
    private static int[] with(int[] widths, int column) {
        int[] more = widths.clone();
        more[column]++;
        return more;
    }

    /** The columns by which a reader knows one row from another: the first, and the second where that is not enough. */
    private List<Integer> names() {
        long different = rows.stream().map(row -> row.get(0)).distinct().count();
        return different < rows.size() && columns.size() > 2 ? List.of(0, 1) : List.of(0);
    }

    /** The heading of a column, with the unit on the line of the word before it. */
    private static String heading(Column column) {
        String title = column.title();
        return column.notation().isPresent() ? title.replaceFirst(", (?=\\S+$)", ",\u00a0") : title;
    }

    private boolean isWords(int column) {
        return columns.get(column).holds() == Column.Holds.WORDS;
    }

    private int cells(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }

    private int natural(int column) {
        return Math.max(head.get(column).length(), cells(column));
    }

    /** As little room as a column can do with. */
    private int narrow(int column, List<Integer> names) {
        if (isWords(column)) {
            int most = !names.contains(column) ? SHORT_WORDS : names.size() > 1 ? SHORT_NAMES : SHORT_NAME;
            return Math.min(natural(column), most);
        }
        int longest = Stream.of(KeptTogether.in(head.get(column)).split(" ", -1))
                .mapToInt(String::length)
                .max()
                .orElse(0);
        return Math.min(
                natural(column),
                IntStream.of(cells(column), longest, SHORT_HEADING).max().orElse(0));
    }

    private static int width(List<Integer> block, int[] widths) {
        return block.stream().mapToInt(column -> widths[column]).sum() + BETWEEN.length() * (block.size() - 1);
    }

    private static boolean fit(List<List<Integer>> blocks, int[] widths) {
        return blocks.stream().allMatch(block -> width(block, widths) <= TextLines.WIDTH);
    }

    /** As few blocks as the terminal allows, of about as many columns each. */
    private List<List<Integer>> balanced(List<Integer> names, int[] widths) {
        int fewest = blocks(names, widths, columns.size()).size();
        return IntStream.rangeClosed(1, columns.size())
                .mapToObj(most -> blocks(names, widths, most))
                .filter(blocks -> blocks.size() == fewest)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Columns side by side behind the names of the rows, as far as there is room for them.
     *
     * @param most in a block; a number with its interval is one
     */
    private List<List<Integer>> blocks(List<Integer> names, int[] widths, int most) {
        List<List<Integer>> blocks = new ArrayList<>();
        List<Integer> block = new ArrayList<>(names);
        int inBlock = 0;
        for (int column = names.size(); column < columns.size(); ) {
            int end = column + 1;
            while (end < columns.size() && columns.get(end).holds() == Column.Holds.ENDS) {
                end++;
            }
            List<Integer> next = IntStream.range(column, end).boxed().toList();
            boolean isFull = inBlock == most || width(joined(block, next), widths) > TextLines.WIDTH;
            if (inBlock > 0 && isFull) {
                blocks.add(block);
                block = new ArrayList<>(names);
                inBlock = 0;
            }
            block.addAll(next);
            inBlock++;
            column = end;
        }
        blocks.add(block);
        return blocks;
    }

    private static List<Integer> joined(List<Integer> block, List<Integer> next) {
        return Stream.concat(block.stream(), next.stream()).toList();
    }

    /** The widths with the room that {@code block} leaves given to its words, from the left, but not to the names. */
    private int[] widened(List<Integer> block, int[] widths, List<Integer> names) {
        int[] wide = widths.clone();
        for (int column : block) {
            if (isWords(column) && !names.contains(column)) {
                int room = Math.max(0, TextLines.WIDTH - width(block, wide));
                wide[column] = Math.min(natural(column), wide[column] + room);
            }
        }
        return wide;
    }

    private void block(List<Integer> block, int[] widths) {
        List<List<String>> headings = block.stream()
                .map(column -> TextLines.broken(head.get(column), widths[column], ""))
                .toList();
        int most = most(headings);
        row(block, headings.stream().map(heading -> lowered(heading, most)).toList(), widths);
        rows.forEach(row -> row(
                block,
                block.stream()
                        .map(column -> isWords(column)
                                ? TextLines.broken(row.get(column), widths[column])
                                : List.of(row.get(column)))
                        .toList(),
                widths));
    }

    private static int most(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1);
    }

    /** A heading that ends on the line above the first row. */
    private static List<String> lowered(List<String> heading, int most) {
        return Stream.concat(Collections.nCopies(most - heading.size(), "").stream(), heading.stream())
                .toList();
    }

    /** A row in as many lines as the longest of its cells takes; numbers stand on the first. */
    private void row(List<Integer> block, List<List<String>> cells, int[] widths) {
        for (int line = 0; line < most(cells); line++) {
            int at = line;
            lines.line(IntStream.range(0, block.size())
                    .mapToObj(i -> {
                        int column = block.get(i);
                        String text = at < cells.get(i).size() ? cells.get(i).get(at) : "";
                        String room = " ".repeat(Math.max(0, widths[column] - text.length()));
                        return isWords(column) ? text + room : room + text;
                    })
                    .collect(Collectors.joining(BETWEEN)));
        }
    }
}
