package runthrough.scenario.coil;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.plant.Coil;
import runthrough.plant.CoilSource;
import runthrough.plant.CoilTable;
import runthrough.quantity.QuantityParser;
import runthrough.quantity.Reading;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Values;
import runthrough.scenario.grammar.Ways;
import runthrough.scenario.source.CsvRows;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problem;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;

/**
 * Reads a schedule of coils from a CSV file: one row a coil, columns named like the keys of a coil. Rows are read one by one,
 * and of a row no more is kept than its coil and its line.
 *
 * <p>The first row that fills certain cells is read like a coil of the scenario, with all its rules and messages. Further
 * rows that fill the same cells are read by {@link ScheduleRow} in a short way, and in the long way again when anything about
 * them is unusual.
 */
final class ScheduleReader {

    /** Several million coils. */
    private static final long LARGEST_FILE = 500_000_000;

    private static final int MOST_COLUMNS = 100;

    private static final String SCHEDULE = "schedule";

    private final Path scenario;
    private final List<Raw.Entry> defaults;
    private final Problems problems;

    ScheduleReader(Path scenario, List<Raw.Entry> defaults, Problems problems) {
        this.scenario = scenario;
        this.defaults = defaults;
        this.problems = problems;
    }

    /** The coils in the file {@code name}, which the scenario names at {@code place}. */
    Optional<CoilSourceReader.Found> read(String name, Place place) {
        Path path;
        try {
            path = scenario.resolveSibling(name);
        } catch (InvalidPathException e) {
            problems.error(place, "coils.schedule", name, "is not a file name", "Give the name of a CSV file.");
            return Optional.empty();
        }
        Optional<TextFile.Hindrance> hindrance = TextFile.hindrance(path, SCHEDULE, LARGEST_FILE);
        if (hindrance.isPresent()) {
            problems.error(
                    place,
                    "coils.schedule",
                    name,
                    hindrance.get().rule(),
                    hindrance.get().remedy());
            return Optional.empty();
        }
        Optional<CsvRows> opened =
                CsvRows.open(path, path.toString(), SCHEDULE, LARGEST_FILE, "one row for each coil", problems);
        if (opened.isEmpty()) {
            return Optional.empty();
        }
        try (CsvRows rows = opened.get()) {
            return read(rows);
        } catch (IOException e) {
            throw new IllegalStateException("a file that was read is closed", e);
        }
    }

    private Optional<CoilSourceReader.Found> read(CsvRows rows) {
        int before = problems.count();
        if (rows.header().size() > MOST_COLUMNS) {
            problems.error(
                    rows.header().get(MOST_COLUMNS).place(),
                    "",
                    "",
                    "the schedule has " + rows.header().size() + " columns; at most " + MOST_COLUMNS + " are read",
                    "Keep the columns that describe a coil.");
            return Optional.empty();
        }
        List<ScheduleColumn> columns = ScheduleColumn.of(rows.header(), defaults, problems);
        if (problems.count() > before) {
            return Optional.empty();
        }
        CoilTable.Builder coils = new CoilTable.Builder();
        RowPlaces places = new RowPlaces(rows.name());
        Map<ScheduleRow.Filled, ScheduleRow> known = new HashMap<>();
        boolean any = false;
        while (rows.next()) {
            any = true;
            if (rows.cells() > columns.size()) {
                problems.error(
                        rows.place(columns.size()),
                        "",
                        rows.cell(columns.size()),
                        "the row has more cells than the header has columns, " + columns.size(),
                        "Check the separators; in a table with commas between columns a number has a decimal point.");
                continue;
            }
            ScheduleRow.Filled filled = ScheduleRow.Filled.of(rows);
            ScheduleRow row = known.get(filled);
            Optional<Coil> coil = row == null ? Optional.empty() : row.coil(rows, coils.size());
            if (coil.isEmpty()) {
                coil = inFull(rows, columns, coils.size());
                coil.ifPresent(read -> known.putIfAbsent(filled, new ScheduleRow(columns, filled, read)));
            }
            coil.ifPresent(coils::add);
            places.add(rows.line());
        }
        if (!any && problems.count() == before) {
            problems.error(Place.whole(rows.name()), "", "", "has no rows", "Give one row for each coil.");
        }
        return problems.count() > before
                ? Optional.empty()
                : Optional.of(new CoilSourceReader.Found(new CoilSource.Schedule(coils.build()), places));
    }

    private Optional<Coil> inFull(CsvRows rows, List<ScheduleColumn> columns, int index) {
        Optional<Raw.Mapping> row = mapping(rows, columns);
        if (row.isEmpty()) {
            return Optional.empty();
        }
        List<Raw.Entry> blank = neededBlanks(rows, columns, CoilOverlay.over(defaults, row.get()));
        List<Raw.Entry> all =
                Stream.concat(row.get().entries().stream(), blank.stream()).toList();
        Problems found = new Problems();
        Optional<Values> values = CoilKeys.COIL.read(
                CoilOverlay.over(defaults, new Raw.Mapping(all, row.get().place())), Context.top(found));
        found.errors().stream()
                .map(problem ->
                        blank.stream().anyMatch(cell -> isOf(problem, cell)) ? blank(problem, columns) : problem)
                .forEach(problems::error);
        return values.map(read -> CoilKeys.coil(read, CoilTable.nameByPlace(index)));
    }

    /** The blank cells of a row that leave {@code coil}, which is described by the others and by the defaults, incomplete. */
    private static List<Raw.Entry> neededBlanks(CsvRows rows, List<ScheduleColumn> columns, Raw.Mapping coil) {
        List<Raw.Entry> blank = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (i >= rows.cells() || rows.cell(i).isBlank()) {
                Place place = rows.place(i);
                blank.add(new Raw.Entry(columns.get(i).key().name(), place, new Raw.Scalar("", place)));
            }
        }
        Set<String> filled = coil.entries().stream().map(Raw.Entry::key).collect(Collectors.toSet());
        Set<String> needed = Stream.concat(
                        CoilKeys.COIL.keys().stream()
                                .filter(key -> key.need() == Key.Need.REQUIRED)
                                .map(Key::name),
                        size(filled, blank).stream())
                .collect(Collectors.toSet());
        return blank.stream()
                .filter(cell -> needed.contains(cell.key()) && !filled.contains(cell.key()))
                .toList();
    }

    /** The keys that would give the size of a coil: in the way that is begun with those {@code filled}, or in the first that could be. */
    private static List<String> size(Set<String> filled, List<Raw.Entry> blank) {
        Set<String> possible = Stream.concat(filled.stream(), blank.stream().map(Raw.Entry::key))
                .collect(Collectors.toSet());
        // An inner diameter goes with every way: they differ in their first key.
        List<Ways.Way> begun = CoilKeys.SIZE.ways().stream()
                .filter(way -> filled.contains(way.must().get(0)))
                .toList();
        return (begun.isEmpty() ? CoilKeys.SIZE.ways() : begun)
                .stream()
                        .filter(way -> possible.containsAll(way.must()))
                        .findFirst()
                        .map(Ways.Way::must)
                        .orElse(List.of());
    }

    private static boolean isOf(Problem problem, Raw.Entry cell) {
        return problem.path().equals(cell.key())
                && new Place(problem.file(), problem.line(), problem.column()).equals(cell.place());
    }

    /** What is said of a blank cell in the place of {@code problem}, which says that there is no value. */
    private static Problem blank(Problem problem, List<ScheduleColumn> columns) {
        ScheduleColumn column = columns.stream()
                .filter(candidate -> candidate.key().name().equals(problem.path()))
                .findFirst()
                .orElseThrow();
        String meaning = column.key().meaning().split(";", 2)[0];
        boolean isSize =
                CoilKeys.SIZE.ways().stream().anyMatch(way -> way.must().contains(problem.path()));
        return Problem.at(
                new Place(problem.file(), problem.line(), problem.column()),
                column.header(),
                "",
                "the cell is blank; it must give " + meaning + ", a number in " + column.unit(),
                "Fill it in, or give "
                        + (isSize
                                ? "the size in another way: " + CoilKeys.SIZE.words()
                                : column.key().name() + " for all coils under coils.defaults of the scenario")
                        + ".");
    }

    /** The row as a coil would stand in a scenario: a number in a column "width [mm]" becomes "width: 240 mm". */
    private Optional<Raw.Mapping> mapping(CsvRows rows, List<ScheduleColumn> columns) {
        List<Raw.Entry> entries = new ArrayList<>();
        boolean isGood = true;
        for (int i = 0; i < rows.cells(); i++) {
            ScheduleColumn column = columns.get(i);
            if (rows.cell(i).isBlank()) {
                continue;
            }
            String text = column.isText() ? rows.cell(i).strip() : rows.number(i);
            Place place = rows.place(i);
            if (!column.isText() && !isNumber(text)) {
                Reading.Unreadable wrong = QuantityParser.oddNumber(text, ScheduleReader::isNumber)
                        .orElseGet(() -> new Reading.Unreadable(
                                "must be a plain number"
                                        + (column.unit().isEmpty() ? "" : ", since the header gives the unit"),
                                "Write the digits and nothing else, such as 12.5."));
                problems.error(place, column.header(), rows.cell(i), wrong.rule(), wrong.remedy());
                isGood = false;
                continue;
            }
            String unit = column.unit().isEmpty() ? "" : " " + column.unit();
            entries.add(new Raw.Entry(column.key().name(), place, new Raw.Scalar(text + unit, place)));
        }
        return isGood ? Optional.of(new Raw.Mapping(entries, rows.place(0))) : Optional.empty();
    }

    private static boolean isNumber(String text) {
        return QuantityParser.readNumber(text).isPresent();
    }
}
