package runthrough.report.write;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.report.Cell;
import runthrough.report.Column;
import runthrough.report.Table;
import runthrough.report.Value;

/**
 * A table as a CSV file: numbers in full, in the user's units, which the header names; times in seconds, shares from 0 to 1.
 * What does not apply is empty. Where rows differ in their unit, a column before the first of their numbers names it.
 */
public final class CsvWriter {
    private static final String STARTS_OF_FORMULAS = "=+-@\t\r\n";

    private final Table table;
    private final List<Integer> columns;
    /** The first column whose cells have units of their own; none where there is no such. */
    private final int units;

    private CsvWriter(Table table) {
        this.table = table;
        this.columns = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            if (table.columns().get(i).place() != Column.Place.PAGE) {
                columns.add(i);
            }
        }
        this.units = columns.stream()
                .filter(i -> table.columns().get(i).holds() != Column.Holds.WORDS
                        && table.columns().get(i).notation().isEmpty())
                .findFirst()
                .orElse(-1);
    }

    /** The whole file. */
    public static String render(Table table) {
        CsvWriter writer = new CsvWriter(table);
        return of(writer.header(), table.rows().stream().map(writer::row).toList());
    }

    private static String of(List<String> header, List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(header);
            for (List<String> row : rows) {
                printer.printRecord(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("memory takes any text", e);
        }
        return text.toString();
    }

    private List<String> header() {
        List<String> header = new ArrayList<>();
        String last = "";
        for (int i : columns) {
            Column column = table.columns().get(i);
            if (i == units) {
                header.add("unit");
            }
            String unit = column.notation()
                    .map(notation -> notation.ofFile().symbol())
                    .filter(symbol -> !symbol.isEmpty())
                    .map(symbol -> " (" + symbol + ")")
                    .orElse("");
            if (column.holds() == Column.Holds.ENDS) {
                header.add(last + " low" + unit);
                header.add(last + " high" + unit);
            } else {
                last = column.heading().isEmpty() ? "name" : column.heading();
                header.add(last + unit);
            }
        }
        return header;
    }

    private List<String> row(List<Cell> row) {
        List<String> cells = new ArrayList<>();
        for (int i : columns) {
            Cell cell = row.get(i);
            if (i == units) {
                cells.add(unit(row));
            }
            switch (table.columns().get(i).holds()) {
                case WORDS -> cells.add(text(cell.text()));
                case NUMBERS ->
                    cells.add(cell.value()
                            .map(value -> number(value.si(), value.notation()))
                            .orElseGet(() -> text(cell.text())));
                case ENDS -> ends(cell.value(), cells);
            }
        }
        return cells;
    }

    private static void ends(Optional<Value> value, List<String> cells) {
        value.flatMap(Value::interval)
                .ifPresentOrElse(
                        ends -> {
                            Notation notation = value.get().notation();
                            cells.add(number(ends.low(), notation));
                            cells.add(number(ends.high(), notation));
                        },
                        () -> cells.addAll(List.of("", "")));
    }

    private static String unit(List<Cell> row) {
        return row.stream()
                .flatMap(cell -> cell.value().stream())
                .findFirst()
                .map(value -> value.notation().ofFile().symbol())
                .orElse("");
    }

    private static String number(double si, Notation notation) {
        return number(notation.ofFile().value(si));
    }

    /** A number in full, with a decimal point; nothing for what is not a number. */
    public static String number(double value) {
        return Double.isFinite(value) ? Numbers.plain(value) : "";
    }

    /**
     * Text of the user. A spreadsheet takes a cell that begins like a formula for one and runs it; an apostrophe in front
     * makes it text.
     */
    public static String text(String text) {
        return !text.isEmpty() && STARTS_OF_FORMULAS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
