package runthrough.scenario.times;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.scenario.source.CsvTable;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;
import runthrough.scenario.times.SheetColumn.Role;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;
import runthrough.timestudy.TimedElement;

/** Reads a time-study sheet, or reports everything that is wrong with it. */
public final class TimeSheetReader {

    private static final String SHEET = "time-study sheet";
    private static final int LARGEST_FILE = 5_000_000;
    private static final int MOST_COLUMNS = 100;
    private static final int MOST_ROWS = 20_000;

    private final String file;
    private final Problems problems;

    private TimeSheetReader(String file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /**
     * Reads {@code path}. Never throws for what a file holds.
     *
     * @param name as the user gave it, for messages
     */
    public static TimeSheetReading read(Path path, String name) {
        Problems problems = new Problems();
        Optional<TimeSheet> sheet = read(path, name, problems);
        return sheet.isPresent()
                ? new TimeSheetReading.Accepted(sheet.get(), problems.warnings())
                : new TimeSheetReading.Refused(problems.errors(), problems.further(), problems.warnings());
    }

    /** Why {@code path} cannot be read, whatever it holds. */
    public static Optional<TextFile.Hindrance> hindrance(Path path) {
        return TextFile.hindrance(path, SHEET, LARGEST_FILE);
    }

    /**
     * The sheet in {@code path}; empty when something is wrong, and {@code problems} says what.
     *
     * @param name as the user gave it, for messages
     */
    public static Optional<TimeSheet> read(Path path, String name, Problems problems) {
        int before = problems.count();
        return TextFile.read(path, name, SHEET, LARGEST_FILE, problems)
                .flatMap(text -> CsvTable.read(text, CsvTable.separator(text), "observed coil change", problems)
                        .flatMap(table -> new TimeSheetReader(name, problems).sheet(table, CsvTable.separator(text))))
                .filter(sheet -> problems.count() == before);
    }

    private Optional<TimeSheet> sheet(CsvTable table, char separator) {
        if (tellOfSize(table)) {
            return Optional.empty();
        }
        int before = problems.count();
        List<Optional<SheetColumn>> columns = table.header().stream()
                .map(cell -> SheetColumn.of(cell, problems))
                .toList();
        tellOfDuplicates(columns);
        List<SheetColumn> known = columns.stream().flatMap(Optional::stream).toList();
        if (known.size() < columns.size()) {
            return Optional.empty();
        }
        if (known.stream().noneMatch(column -> column.role() == Role.TIMES)) {
            problems.error(
                    table.header().get(0).place(),
                    "",
                    "",
                    "no column holds the times of a work element",
                    "Give each element a column, such as join: weld [s].");
            return Optional.empty();
        }
        boolean comma = separator != ',' && SheetRows.hasDecimalComma(table.rows(), known);
        List<Observation> rows = new SheetRows(known, new TimeText(comma), problems).read(table.rows());
        if (problems.count() > before) {
            return Optional.empty();
        }
        return rows.isEmpty() ? withoutRows() : Optional.of(timed(known, rows));
    }

    private Optional<TimeSheet> withoutRows() {
        problems.error(
                Place.whole(file), "", "", "has no row with a time", "Give one row for each observed coil change.");
        return Optional.empty();
    }

    private boolean tellOfSize(CsvTable table) {
        int columns = table.header().size();
        if (columns > MOST_COLUMNS) {
            problems.error(
                    table.header().get(MOST_COLUMNS).place(),
                    "",
                    "",
                    "the sheet has " + columns + " columns; at most " + MOST_COLUMNS + " are read",
                    "Give each work element one column, and each coil change a row.");
        }
        int rows = table.rows().size();
        if (rows > MOST_ROWS) {
            problems.error(
                    table.rows().get(MOST_ROWS).place(),
                    "",
                    "",
                    "the sheet has " + rows + " rows; at most " + MOST_ROWS + " are read",
                    "Split the sheet, for example by month.");
        }
        return columns > MOST_COLUMNS || rows > MOST_ROWS;
    }

    private void tellOfDuplicates(List<Optional<SheetColumn>> columns) {
        Map<String, Place> seen = new HashMap<>();
        for (SheetColumn column : columns.stream().flatMap(Optional::stream).toList()) {
            if (column.role() != Role.TIMES && column.role() != Role.RATING) {
                continue;
            }
            String name = column.key();
            Raw.Scalar header = column.header();
            Place earlier = seen.putIfAbsent(name, header.place());
            if (earlier != null) {
                problems.error(
                        header.place(),
                        "",
                        header.text(),
                        "a second column of this name; the first is at " + earlier.line() + ":" + earlier.column(),
                        "Give each work element a name of its own, or leave one column out.");
            }
        }
    }

    /** The sheet of the columns in which something was timed. */
    private TimeSheet timed(List<SheetColumn> columns, List<Observation> rows) {
        List<Integer> places = IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).role() == Role.TIMES)
                .boxed()
                .toList();
        List<Integer> kept = IntStream.range(0, places.size())
                .filter(i -> rows.stream().anyMatch(row -> !row.times().get(i).isNaN()))
                .boxed()
                .toList();
        IntStream.range(0, places.size()).filter(i -> !kept.contains(i)).forEach(i -> {
            Raw.Scalar header = columns.get(places.get(i)).header();
            problems.warning(header.place(), "", header.text(), "the column holds no time", "The element is left out.");
        });
        List<TimedElement> elements = kept.stream()
                .map(i -> columns.get(places.get(i)).element(places.get(i) + 1))
                .toList();
        List<Observation> cut = rows.stream()
                .map(row -> new Observation(
                        row.number(),
                        row.line(),
                        kept.stream().map(row.times()::get).toList(),
                        row.rating(),
                        row.label(),
                        row.remark()))
                .toList();
        return new TimeSheet(file, elements, cut);
    }
}
