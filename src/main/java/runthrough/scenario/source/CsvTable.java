package runthrough.scenario.source;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of values separated by commas, semicolons or tabs, with a header, in which every cell knows its place. Empty lines are skipped, and so are
 * lines that begin with {@code #}.
 *
 * @param header the first row
 * @param rows the others; short ones simply have fewer cells
 */
public record CsvTable(List<Raw.Scalar> header, List<Row> rows) {

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    /** One row. */
    public record Row(List<Raw.Scalar> cells, Place place) {}

    /**
     * The table in {@code file}; empty when it cannot be read, and {@code problems} says why.
     *
     * @param separator between the cells of a row
     * @param row what a row stands for, for messages
     */
    public static Optional<CsvTable> read(TextFile file, char separator, String row, Problems problems) {
        List<Row> rows = new ArrayList<>();
        Lines lines = new Lines(file, separator);
        CSVFormat format = FORMAT.builder().setDelimiter(separator).get();
        try (CSVParser parser = CSVParser.parse(file.text(), format)) {
            for (CSVRecord found : parser) {
                Interrupted.check("a table is read");
                rows.add(lines.row(found));
            }
        } catch (IOException | UncheckedIOException e) {
            Place place =
                    rows.isEmpty() ? lines.first() : rows.get(rows.size() - 1).place();
            problems.error(place, "", "", "is not CSV from here on", "Check quotes: each needs its closing one.");
            return Optional.empty();
        }
        if (rows.isEmpty()) {
            problems.error(
                    Place.whole(file.name()), "", "", "is empty", "Give a header and one row for each " + row + ".");
            return Optional.empty();
        }
        Row header = rows.remove(0);
        return Optional.of(new CsvTable(header.cells(), rows));
    }

    /** The separator that the header uses: whichever of tab, semicolon and comma it has most of; a comma without any. */
    public static char separator(TextFile file) {
        String header = file.text()
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("")
                .replaceAll("\"[^\"]*\"", "");
        char best = ',';
        for (char separator : new char[] {';', '\t'}) {
            if (count(header, separator) > count(header, best)) {
                best = separator;
            }
        }
        return best;
    }

    private static long count(String text, char sought) {
        return text.chars().filter(c -> c == sought).count();
    }

    /** Finds the line and column of each cell, while records come in order. */
    private static final class Lines {
        private final TextFile file;
        private final char separator;
        private int position;
        private int line = 1;
        private int lineStart;

        Lines(TextFile file, char separator) {
            this.file = file;
            this.separator = separator;
        }

        /** Where the first row begins, before any was seen. */
        Place first() {
            skipIdleLines();
            return place();
        }

        Row row(CSVRecord row) {
            advanceTo((int) row.getCharacterPosition());
            // Comments and empty lines before a record count as part of it.
            skipIdleLines();
            Place start = place();
            List<Raw.Scalar> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(new Raw.Scalar(row.get(i), place()));
                toNextCell();
            }
            return new Row(cells, start);
        }

        private void advanceTo(int target) {
            while (position < target && position < file.text().length()) {
                step();
            }
        }

        private void skipIdleLines() {
            String text = file.text();
            while (position < text.length()) {
                char c = text.charAt(position);
                if (c == '#') {
                    int end = text.indexOf('\n', position);
                    advanceTo(end < 0 ? text.length() : end + 1);
                } else if (c == '\n' || c == '\r') {
                    step();
                } else {
                    return;
                }
            }
        }

        /** Steps behind the separator that ends this cell, or to the end of the row. */
        private void toNextCell() {
            String text = file.text();
            boolean isQuoted = false;
            while (position < text.length()) {
                char c = text.charAt(position);
                if (c == '"') {
                    isQuoted = !isQuoted;
                } else if (!isQuoted && (c == '\n' || c == '\r')) {
                    return;
                }
                step();
                if (!isQuoted && c == separator) {
                    return;
                }
            }
        }

        private void step() {
            if (file.text().charAt(position) == '\n') {
                line++;
                lineStart = position + 1;
            }
            position++;
        }

        private Place place() {
            return new Place(file.name(), line, position - lineStart + 1);
        }
    }
}
