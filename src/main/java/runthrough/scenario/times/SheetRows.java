package runthrough.scenario.times;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import runthrough.scenario.source.CsvTable;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.times.SheetColumn.Role;
import runthrough.timestudy.Observation;

/**
 * Reads the rows of a time-study sheet.
 *
 * @param columns of the sheet
 * @param texts how its numbers are written
 * @param problems what was found so far
 */
record SheetRows(List<SheetColumn> columns, TimeText texts, Problems problems) {

    private static final double LEAST_RATING = 20;
    private static final double GREATEST_RATING = 200;
    private static final Pattern SUMMARY =
            Pattern.compile("(?i)(mean|average|avg|sum|total|min|max|minimum|maximum|median|sd|std|count)\\.?:?");

    /** Whether a number in one of {@code rows} has a decimal comma. */
    static boolean hasDecimalComma(List<CsvTable.Row> rows, List<SheetColumn> columns) {
        return rows.stream()
                .anyMatch(row -> IntStream.range(
                                0, Math.min(columns.size(), row.cells().size()))
                        .filter(i -> columns.get(i).role() == Role.TIMES
                                || columns.get(i).role() == Role.RATING)
                        .anyMatch(i -> row.cells().get(i).text().contains(",")));
    }

    /** The rows in which something was timed, numbered as they stand in the sheet. */
    List<Observation> read(List<CsvTable.Row> rows) {
        List<Observation> read = new ArrayList<>();
        int number = 0;
        for (CsvTable.Row row : rows) {
            if (row.cells().stream().allMatch(cell -> cell.text().isBlank())) {
                continue;
            }
            number++;
            int before = problems.count();
            tellOfShape(row);
            Observation observation = observation(row, number);
            if (observation.times().stream().anyMatch(time -> !time.isNaN())) {
                read.add(observation);
            } else if (problems.count() == before) {
                problems.warning(row.place(), "", "", "the row holds no time", "It is left out.");
            }
        }
        return read;
    }

    private void tellOfShape(CsvTable.Row row) {
        int cells = row.cells().size();
        if (cells < columns.size()) {
            problems.error(
                    row.place(),
                    "",
                    "",
                    "the row has " + cells + (cells == 1 ? " cell" : " cells") + ", but the header has "
                            + columns.size(),
                    "Give every row all separators, and leave blank what was not timed.");
        }
        for (int i = 0; i < cells; i++) {
            Raw.Scalar cell = row.cells().get(i);
            if (i >= columns.size() && !cell.text().isBlank()) {
                problems.error(
                        cell.place(),
                        "",
                        cell.text(),
                        "the row has more cells than the header has columns, " + columns.size(),
                        "Check the separators, and quote text that holds one.");
                return;
            }
            if (i < columns.size()) {
                tellOfText(cell, columns.get(i));
            }
        }
    }

    private void tellOfText(Raw.Scalar cell, SheetColumn column) {
        if (column.role() == Role.BLANK && !cell.text().isBlank()) {
            problems.error(
                    cell.place(),
                    "",
                    cell.text(),
                    "stands in a column without a name",
                    "Name the column in the first row, \"remark\" if it holds words.");
        }
        if (column.role() == Role.LABEL && SUMMARY.matcher(cell.text().strip()).matches()) {
            problems.error(
                    cell.place(),
                    column.header().text(),
                    cell.text(),
                    "the row looks like a summary, not like an observation",
                    "Delete the row; means and the like are worked out anew.");
        }
    }

    private Observation observation(CsvTable.Row row, int number) {
        List<Double> times = new ArrayList<>();
        OptionalDouble rating = OptionalDouble.empty();
        for (int i = 0; i < cells(row); i++) {
            Raw.Scalar cell = row.cells().get(i);
            if (columns.get(i).role() == Role.TIMES) {
                times.add(time(cell, columns.get(i)));
            } else if (columns.get(i).role() == Role.RATING && !cell.text().isBlank()) {
                rating = rating(cell, columns.get(i));
            }
        }
        return new Observation(
                number, row.place().line(), times, rating, words(row, Role.LABEL), words(row, Role.REMARK));
    }

    /** How many of its cells have a column. */
    private int cells(CsvTable.Row row) {
        return Math.min(columns.size(), row.cells().size());
    }

    private double time(Raw.Scalar cell, SheetColumn column) {
        TimeText.Cell read = texts.read(cell.text(), column.unit());
        if (read instanceof TimeText.Unreadable unreadable) {
            problems.error(cell.place(), column.header().text(), cell.text(), unreadable.rule(), unreadable.remedy());
            return Double.NaN;
        }
        double seconds = ((TimeText.Seconds) read).value();
        if (seconds == 0) {
            problems.warning(
                    cell.place(),
                    column.header().text(),
                    cell.text(),
                    "is counted as an element that took no time",
                    "Leave the cell blank if the element was not done.");
        }
        return seconds;
    }

    private OptionalDouble rating(Raw.Scalar cell, SheetColumn column) {
        OptionalDouble percent = texts.percent(cell.text());
        if (percent.isPresent() && percent.getAsDouble() >= LEAST_RATING && percent.getAsDouble() <= GREATEST_RATING) {
            return OptionalDouble.of(percent.getAsDouble() / 100);
        }
        String remedy = percent.isPresent() && percent.getAsDouble() > 0 && percent.getAsDouble() < 2
                ? "Write the rating in per cent, standard performance being 100."
                : "Correct the cell, or leave it blank if the row was not rated.";
        problems.error(
                cell.place(),
                column.header().text(),
                cell.text(),
                "a rating must be a number from 20 to 200, standard performance being 100",
                remedy);
        return OptionalDouble.empty();
    }

    private String words(CsvTable.Row row, Role role) {
        return IntStream.range(0, cells(row))
                .filter(i -> columns.get(i).role() == role)
                .mapToObj(i -> row.cells().get(i).text().strip())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
