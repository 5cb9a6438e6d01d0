package runthrough.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import runthrough.quantity.Notation;

/**
 * Makes a table column by column: of each its heading, its unit and where the values of a row come from, as {@link JsonShape}
 * does for JSON.
 *
 * @param <T> what a row is made from
 */
public final class TableMaker<T> {
    private final String caption;
    private final List<Column> columns = new ArrayList<>();
    private final List<Function<T, Cell>> cells = new ArrayList<>();
    private Optional<String> file = Optional.empty();
    private int most = Integer.MAX_VALUE;

    private TableMaker(String caption) {
        this.caption = caption;
    }

    /** A table of this caption, without columns. */
    public static <T> TableMaker<T> of(String caption) {
        return new TableMaker<>(caption);
    }

    /** All its values go into a CSV file of this name. */
    public TableMaker<T> intoFile(String name) {
        file = Optional.of(name);
        return this;
    }

    /** People are shown the first {@code rows} rows only. */
    public TableMaker<T> shownUpTo(int rows) {
        most = rows;
        return this;
    }

    /** A column of words. */
    public TableMaker<T> words(String heading, Function<T, String> words) {
        return with(Column.words(heading), row -> Cell.of(words.apply(row)));
    }

    /** A column of words that files do not have. */
    public TableMaker<T> pageWords(String heading, Function<T, String> words) {
        return with(
                new Column(heading, Column.Holds.WORDS, Optional.empty(), Column.Place.PAGE),
                row -> Cell.of(words.apply(row)));
    }

    /** A column of words that only files have. */
    public TableMaker<T> fileWords(String heading, Function<T, String> words) {
        return with(
                new Column(heading, Column.Holds.WORDS, Optional.empty(), Column.Place.FILE),
                row -> Cell.of(words.apply(row)));
    }

    /** A column of numbers (SI) of one unit; a row whose number is not a number has an empty cell. */
    public TableMaker<T> number(String heading, Notation notation, ToDoubleFunction<T> si) {
        return number(heading, notation, si, "");
    }

    /** The same with {@code without} where there is no number. */
    public TableMaker<T> number(String heading, Notation notation, ToDoubleFunction<T> si, String without) {
        return with(
                new Column(heading, Column.Holds.NUMBERS, Optional.of(notation), Column.Place.EVERYWHERE),
                row -> new Cell.Quantity(Value.of(si.applyAsDouble(row), notation), without));
    }

    /** A column of numbers (SI) that only files have. */
    public TableMaker<T> fileNumber(String heading, Notation notation, ToDoubleFunction<T> si) {
        return with(
                new Column(heading, Column.Holds.NUMBERS, Optional.of(notation), Column.Place.FILE),
                row -> Cell.of(Value.of(si.applyAsDouble(row), notation)));
    }

    /** A column of counts. */
    public TableMaker<T> count(String heading, ToDoubleFunction<T> count) {
        return number(heading, Notation.PLAIN, count);
    }

    /** A column of whatever cells, each number with its own unit. */
    public TableMaker<T> cell(String heading, Function<T, Cell> cell) {
        return with(Column.numbers(heading), cell);
    }

    /** A column of numbers that have intervals, and, where any is {@code known}, a column of these. */
    public TableMaker<T> estimate(
            String heading, Notation notation, boolean known, String without, Function<T, Value> value) {
        with(
                new Column(heading, Column.Holds.NUMBERS, Optional.of(notation), Column.Place.EVERYWHERE),
                row -> new Cell.Quantity(value.apply(row), without));
        return with(
                new Column(
                        "95 % interval",
                        Column.Holds.ENDS, Optional.of(notation), known ? Column.Place.EVERYWHERE : Column.Place.FILE),
                row -> new Cell.Ends(value.apply(row)));
    }

    /** A column of numbers that have intervals, each with its own unit, and a column of these. */
    public TableMaker<T> estimate(String heading, Function<T, Value> value) {
        cell(heading, row -> Cell.of(value.apply(row)));
        return with(
                new Column("95 % interval", Column.Holds.ENDS, Optional.empty(), Column.Place.EVERYWHERE),
                row -> new Cell.Ends(value.apply(row)));
    }

    /** Any column. */
    public TableMaker<T> with(Column column, Function<T, Cell> cell) {
        columns.add(column);
        cells.add(cell);
        return this;
    }

    /** The table with a row for each of {@code rows}. */
    public Table of(List<T> rows) {
        return new Table(
                caption,
                file,
                columns,
                rows.stream()
                        .map(row -> cells.stream().map(cell -> cell.apply(row)).toList())
                        .toList(),
                most,
                Table.Seen.EVERYWHERE);
    }
}
