package runthrough.scenario;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runthrough.plant.Coil;
import runthrough.plant.Supply;
import runthrough.quantity.QuantityParser;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.source.CsvText;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;

/** Reads a schedule of coils from a CSV file: one row a coil, columns named like the keys of a coil. */
final class ScheduleReader {

    /** Some 80,000 coils: years of them. */
    private static final int LARGEST_FILE = 2_000_000;

    private final Path scenario;
    private final List<Raw.Entry> defaults;
    private final Problems problems;

    ScheduleReader(Path scenario, List<Raw.Entry> defaults, Problems problems) {
        this.scenario = scenario;
        this.defaults = defaults;
        this.problems = problems;
    }

    /** The coils in the file {@code name}, which the scenario names at {@code place}. */
    Optional<SupplyReader.Found> read(String name, Place place) {
        Path path;
        try {
            path = scenario.resolveSibling(name);
        } catch (InvalidPathException e) {
            problems.error(place, "coils.schedule", name, "is not a file name", "Give the name of a CSV file.");
            return Optional.empty();
        }
        int before = problems.count();
        Optional<CsvText> csv = TextFile.read(path, path.toString(), "schedule", LARGEST_FILE, problems)
                .flatMap(file -> CsvText.read(file, problems));
        if (csv.isEmpty()) {
            return Optional.empty();
        }
        List<ScheduleColumn> columns = ScheduleColumn.of(csv.get().header(), defaults, problems);
        if (problems.count() > before) {
            return Optional.empty();
        }
        if (csv.get().rows().isEmpty()) {
            problems.error(Place.whole(path.toString()), "", "", "has no rows", "Give one row for each coil.");
            return Optional.empty();
        }
        return coils(csv.get(), columns, before);
    }

    private Optional<SupplyReader.Found> coils(CsvText csv, List<ScheduleColumn> columns, int before) {
        List<Coil> coils = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        for (CsvText.Row row : csv.rows()) {
            if (row.cells().size() > columns.size()) {
                problems.error(
                        row.cells().get(columns.size()).place(),
                        "",
                        row.cells().get(columns.size()).text(),
                        "the row has more cells than the header has columns, " + columns.size(),
                        "Check the commas; a number has a decimal point.");
                continue;
            }
            mapping(row, columns).ifPresent(coil -> {
                Raw.Mapping whole = CoilOverlay.over(defaults, coil);
                String name = "coil " + (coils.size() + 1);
                CoilKeys.COIL
                        .read(whole, Context.top(problems))
                        .ifPresent(values -> coils.add(CoilKeys.coil(values, name)));
                places.add(row.place());
            });
        }
        return problems.count() > before
                ? Optional.empty()
                : Optional.of(new SupplyReader.Found(new Supply.Schedule(coils), places));
    }

    /** The row as a coil would stand in a scenario: a number in a column "width [mm]" becomes "width: 240 mm". */
    private Optional<Raw.Mapping> mapping(CsvText.Row row, List<ScheduleColumn> columns) {
        List<Raw.Entry> entries = new ArrayList<>();
        boolean isGood = true;
        for (int i = 0; i < row.cells().size(); i++) {
            Raw.Scalar cell = row.cells().get(i);
            ScheduleColumn column = columns.get(i);
            if (cell.text().isBlank()) {
                continue;
            }
            if (!column.isText() && QuantityParser.readNumber(cell.text()).isEmpty()) {
                problems.error(
                        cell.place(),
                        column.header(),
                        cell.text(),
                        "must be a plain number" + (column.unit().isEmpty() ? "" : ", since the header gives the unit"),
                        "Write it with a decimal point and nothing else, such as 12.5.");
                isGood = false;
                continue;
            }
            String unit = column.unit().isEmpty() ? "" : " " + column.unit();
            entries.add(new Raw.Entry(
                    column.key().name(),
                    cell.place(),
                    new Raw.Scalar(cell.text().strip() + unit, cell.place())));
        }
        return isGood ? Optional.of(new Raw.Mapping(entries, row.place())) : Optional.empty();
    }
}
