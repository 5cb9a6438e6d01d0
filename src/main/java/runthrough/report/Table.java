package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A table of an answer. Its cells hold values; who writes it for people writes them with {@link #page}, who writes a file
 * takes the values themselves.
 *
 * @param caption what it shows
 * @param file name of the CSV file that holds all its values; empty where it has none
 * @param columns all of them; the first names the row
 * @param rows as many cells as columns each
 * @param most rows that people are shown; a file has all of them
 * @param seen where people see it
 */
public record Table(
        String caption, Optional<String> file, List<Column> columns, List<List<Cell>> rows, int most, Seen seen) {

    /** Where people see a table. */
    public enum Seen {
        EVERYWHERE,
        /** Everywhere, and straight after the headline. */
        FIRST,
        /** Pages only: too much for a terminal. */
        PAGE,
        /** Terminals only: pages say it in another way. */
        TERMINAL
    }

    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Cell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "row " + row + " of table \"" + caption + "\" needs " + columns.size() + " cells");
            }
        }
    }

    /** A table without a file. */
    public Table(String caption, List<Column> columns, List<List<Cell>> rows) {
        this(caption, Optional.empty(), columns, rows, Integer.MAX_VALUE, Seen.EVERYWHERE);
    }

    /** Names and values, a row each. */
    public static Table pairs(String caption, List<List<Cell>> rows) {
        return new Table(caption, List.of(Column.words(""), Column.words("")), rows);
    }

    /** The same table for {@code where} alone. */
    public Table in(Seen where) {
        return new Table(caption, file, columns, rows, most, where);
    }

    /** What people are shown. */
    public Page page() {
        List<Integer> shown = IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).place() != Column.Place.FILE)
                .boxed()
                .toList();
        List<Column> seen = shown.stream().map(columns::get).toList();
        List<List<Cell>> cells = rows.stream()
                .limit(most)
                .map(row -> shown.stream().map(row::get).toList())
                .toList();
        return new Page(caption, seen, cells);
    }

    /**
     * Whether it is shown on {@code where}, in its turn: a table may be for a file alone, and one without rows is not shown. One that
     * comes first is asked for by {@link Seen#FIRST}.
     */
    public boolean isShownOn(Seen where) {
        boolean isInTurn = seen == Seen.EVERYWHERE && where != Seen.FIRST;
        return !rows.isEmpty() && most > 0 && (isInTurn || seen == where);
    }

    /**
     * A table as people are shown it.
     *
     * @param caption what it shows
     * @param columns that are shown
     * @param cells row by row
     */
    public record Page(String caption, List<Column> columns, List<List<Cell>> cells) {
        /** Whether it is a list of names and values, without headings. */
        public boolean isPairs() {
            return columns.stream().allMatch(column -> column.title().isEmpty());
        }

        /** Whether any column holds numbers, to stand at the right. */
        public boolean hasNumbers() {
            return columns.stream().anyMatch(column -> column.holds() != Column.Holds.WORDS);
        }

        /** Whether a column is of words beside numbers: these are read from the left. */
        public boolean saysWords(int column) {
            return column > 0 && hasNumbers() && columns.get(column).holds() == Column.Holds.WORDS;
        }

        /** The headings. */
        public List<String> head() {
            return columns.stream().map(Column::title).toList();
        }

        /** The text of every cell, with blanks alone between words. */
        public List<List<String>> rows() {
            List<List<String>> texts = new ArrayList<>();
            for (List<Cell> row : cells) {
                texts.add(IntStream.range(0, row.size())
                        .mapToObj(i -> columns.get(i).notation().isPresent()
                                ? row.get(i).bare()
                                : row.get(i).text())
                        .map(text -> text.replace('\u00a0', ' '))
                        .toList());
            }
            return texts;
        }
    }
}
