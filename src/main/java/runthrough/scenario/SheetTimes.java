package runthrough.scenario;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import runthrough.plant.MeasuredRows;
import runthrough.plant.WorkElement.WorkTime;
import runthrough.scenario.grammar.Context;
import runthrough.scenario.source.Nearest;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;
import runthrough.scenario.times.TimeSheetReader;
import runthrough.timestudy.Observation;
import runthrough.timestudy.TimeSheet;

/** The times of a work element as a time-study sheet has them. */
final class SheetTimes {
    private SheetTimes() {}

    /**
     * The times of the column {@code column} of the sheet {@code name}, as observed; empty when something is wrong, and the
     * problems are reported.
     *
     * @param element the element as written, in the file that the sheet stands beside
     */
    static Optional<WorkTime.FromRows> of(Raw.Mapping element, String name, String column, Context context) {
        Raw written = element.find("sheet").orElse(element);
        Path path;
        try {
            path = Path.of(written.place().file()).resolveSibling(name);
        } catch (InvalidPathException e) {
            context.error(written, "is not a file name", "Give the name of a CSV file.");
            return Optional.empty();
        }
        Optional<TextFile.Hindrance> hindrance = TimeSheetReader.hindrance(path);
        if (hindrance.isPresent()) {
            context.error(written, hindrance.get().rule(), hindrance.get().remedy());
            return Optional.empty();
        }
        if (context.isRetold()) {
            return Optional.empty();
        }
        if (context.problems().isRefused(path.toString())) {
            context.problems().repeat();
            return Optional.empty();
        }
        return TimeSheetReader.read(path, path.toString(), context.problems())
                .flatMap(sheet -> place(sheet, column, element.find("column").orElse(written), context)
                        .map(place -> new WorkTime.FromRows(rows(sheet, name), place, 1)));
    }

    private static MeasuredRows rows(TimeSheet sheet, String name) {
        return MeasuredRows.of(
                name, sheet.rows().stream().map(Observation::times).toList());
    }

    /** A column is found by its name, or by its part of the coil change and its name where several have that name. */
    private static Optional<Integer> place(TimeSheet sheet, String column, Raw written, Context context) {
        String wanted = column.toLowerCase(Locale.ROOT);
        List<Integer> found = IntStream.range(0, sheet.elements().size())
                .filter(i ->
                        sheet.elements().get(i).name().toLowerCase(Locale.ROOT).equals(wanted)
                                || sheet.elements()
                                        .get(i)
                                        .label()
                                        .toLowerCase(Locale.ROOT)
                                        .equals(wanted))
                .boxed()
                .toList();
        if (found.size() == 1) {
            return Optional.of(found.get(0));
        }
        List<String> labels =
                sheet.elements().stream().map(element -> element.label()).toList();
        if (found.isEmpty()) {
            String meant = Nearest.to(column, labels)
                    .map(nearest -> "Did you mean " + nearest + "?")
                    .orElse("Columns of the sheet are: " + String.join(", ", labels) + ".");
            context.error(written, "the sheet has no column " + column, meant);
        } else {
            context.error(
                    written,
                    "the sheet has several columns " + column,
                    "Give one of: "
                            + String.join(", ", found.stream().map(labels::get).toList()) + ".");
        }
        return Optional.empty();
    }
}
