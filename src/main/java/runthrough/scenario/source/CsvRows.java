package runthrough.scenario.source;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/**
 * A table with a header, read row by row, of which no more than the present row is kept, so that it may be far larger than
 * memory. Columns are separated by commas, semicolons or tabs, whichever the header has. Empty lines are skipped, and so are
 * lines that begin with {@code #}.
 *
 * <p>Between commas a number has a decimal point. Between semicolons or tabs it may have a decimal comma instead, but a table
 * that has both is refused, since a point may then be meant to group thousands.
 */
public final class CsvRows implements AutoCloseable {
    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    private final String name;
    private final Problems problems;
    private final char separator;
    private final CSVParser parser;
    private final Iterator<CSVRecord> records;
    private final Lines lines;
    private List<Raw.Scalar> header = List.of();
    private @Nullable CSVRecord row;
    private boolean sawComma;
    private boolean sawPoint;

    private CsvRows(Path path, String name, char separator, Problems problems) throws IOException {
        this.name = name;
        this.problems = problems;
        this.separator = separator;
        WatchedText text = new WatchedText(Files.newInputStream(path));
        this.lines = new Lines(name, text, separator);
        this.parser =
                CSVParser.parse(text, FORMAT.builder().setDelimiter(separator).get());
        this.records = parser.iterator();
    }

    /**
     * Opens {@code path} and reads its header, or adds to {@code problems} why not.
     *
     * @param name as the user gave it, for messages
     * @param what the file is, such as "schedule"
     * @param largest size that is read (bytes)
     * @param row what a row is, such as "one row for each coil"
     */
    public static Optional<CsvRows> open(
            Path path, String name, String what, long largest, String row, Problems problems) {
        if (!TextFile.canBeRead(path, name, what, largest, problems)) {
            return Optional.empty();
        }
        try {
            CsvRows rows = new CsvRows(path, name, separator(path), problems);
            int before = problems.count();
            if (rows.next()) {
                rows.header = IntStream.range(0, rows.cells())
                        .mapToObj(i -> new Raw.Scalar(rows.cell(i), rows.place(i)))
                        .toList();
                return Optional.of(rows);
            }
            if (problems.count() == before) {
                problems.error(Place.whole(name), "", "", "is empty", "Give a header and " + row + ".");
            }
            rows.close();
        } catch (IOException e) {
            problems.error(
                    Place.whole(name),
                    "",
                    "",
                    "cannot be read (" + e.getMessage() + ")",
                    "Check the disk or the connection.");
        }
        return Optional.empty();
    }

    /** What separates the columns of the first line that is neither empty nor a comment. */
    private static char separator(Path path) throws IOException {
        try (var text = new java.io.BufferedReader(new WatchedText(Files.newInputStream(path)))) {
            for (String line = text.readLine(); line != null; line = text.readLine()) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    String plain = line.replaceAll("\"[^\"]*\"|\\[[^\\]]*]", "");
                    return plain.indexOf(';') >= 0 ? ';' : plain.indexOf('\t') >= 0 ? '\t' : ',';
                }
            }
        } catch (WatchedText.Refused e) {
            // Reported when the table itself is read.
        }
        return ',';
    }

    /** The first row. */
    public List<Raw.Scalar> header() {
        return header;
    }

    /** Goes on to the next row; false when there is none, or when the text is no table from here on, which is reported. */
    public boolean next() {
        try {
            if (!records.hasNext()) {
                return false;
            }
            row = records.next();
            lines.startOf(row);
            return true;
        } catch (UncheckedIOException e) {
            tell(e.getCause());
        } catch (IllegalStateException e) {
            tell(e.getCause() instanceof IOException cause ? cause : new IOException(e));
        }
        return false;
    }

    private void tell(@Nullable IOException cause) {
        if (cause instanceof WatchedText.Refused refused) {
            problems.error(lines.placeOf(refused.position()), "", "", refused.rule(), refused.remedy());
        } else {
            problems.error(place(0), "", "", "is not CSV from here on", "Check quotes: each needs its closing one.");
        }
    }

    /** How many cells the present row has. */
    public int cells() {
        return row().size();
    }

    /** Cell {@code index} of the present row, from 0. */
    public String cell(int index) {
        return row().get(index);
    }

    /** The line on which the present row begins, from 1. */
    public int line() {
        return lines.line;
    }

    /** Where cell {@code index} of the present row begins. */
    public Place place(int index) {
        return lines.placeOfCell(index);
    }

    /** The name of the file, for messages. */
    public String name() {
        return name;
    }

    /**
     * A cell as a number is written elsewhere, with a decimal point. When the table writes numbers in two ways, that is reported,
     * once, and of the second way.
     */
    public String number(int index) {
        String text = cell(index).strip();
        if (separator == ',') {
            return text;
        }
        boolean hasComma = text.indexOf(',') >= 0;
        boolean hasPoint = text.indexOf('.') >= 0;
        boolean wasMixed = sawComma && sawPoint;
        sawComma |= hasComma;
        sawPoint |= hasPoint;
        if (sawComma && sawPoint && !wasMixed) {
            problems.error(
                    place(index),
                    "",
                    text,
                    "some numbers of this table have a decimal comma and some a point",
                    "Write all numbers in one way, and do not group thousands.");
        }
        return hasComma && text.indexOf(',') == text.lastIndexOf(',') ? text.replace(',', '.') : text;
    }

    private CSVRecord row() {
        if (row == null) {
            throw new IllegalStateException("no row yet");
        }
        return row;
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }

    /** Finds the line and column of the present row and its cells. */
    private static final class Lines {
        private final String name;
        private final WatchedText text;
        private final char separator;
        private long position;
        private long lineStart;
        private int line = 1;
        /** The cell looked for last, and where it begins. */
        private int cell;

        private long cellStart;
        private int cellLine = 1;
        private long cellLineStart;

        Lines(String name, WatchedText text, char separator) {
            this.name = name;
            this.text = text;
            this.separator = separator;
        }

        void startOf(CSVRecord row) {
            long target = row.getCharacterPosition();
            while (position < target) {
                step();
            }
            // Comments and empty lines before a record count as part of it.
            while (position < text.count() && "#\r\n".indexOf(text.charAt(position)) >= 0) {
                boolean isComment = text.charAt(position) == '#';
                step();
                while (isComment && position < text.count() && "\r\n".indexOf(text.charAt(position - 1)) < 0) {
                    step();
                }
            }
            atFirstCell();
        }

        private void step() {
            if (isLineEnd(position)) {
                line++;
            }
            position++;
            if ("\r\n".indexOf(text.charAt(position - 1)) >= 0) {
                lineStart = position;
            }
        }

        /** Whether a line ends here: with CR, with LF, or with both, which are one end. */
        private boolean isLineEnd(long at) {
            char c = text.charAt(at);
            return c == '\r' || (c == '\n' && (at == 0 || text.charAt(at - 1) != '\r'));
        }

        /** The cells of a row are mostly asked after in order: each is looked for from the one before. */
        Place placeOfCell(int index) {
            if (index < cell) {
                atFirstCell();
            }
            boolean isQuoted = false;
            while (cell < index && cellStart < text.count()) {
                char c = text.charAt(cellStart++);
                if (c == '"') {
                    isQuoted = !isQuoted;
                } else if (c == '\r' || c == '\n') {
                    if (!isQuoted) {
                        break;
                    }
                    cellLine += isLineEnd(cellStart - 1) ? 1 : 0;
                    cellLineStart = cellStart;
                } else if (!isQuoted && c == separator) {
                    cell++;
                }
            }
            Place place = new Place(name, cellLine, (int) (cellStart - cellLineStart) + 1);
            if (cell < index) {
                // The row has no such cell.
                atFirstCell();
            }
            return place;
        }

        private void atFirstCell() {
            cell = 0;
            cellStart = position;
            cellLine = line;
            cellLineStart = lineStart;
        }

        /** Where the character behind {@code before} others stands, which is not before the present row. */
        Place placeOf(long before) {
            while (position < before) {
                step();
            }
            return new Place(name, line, (int) (position - lineStart) + 1);
        }
    }
}
