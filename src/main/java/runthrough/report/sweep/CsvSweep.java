package runthrough.report.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.jspecify.annotations.Nullable;
import runthrough.quantity.Numbers;
import runthrough.report.JsonShape;
import runthrough.report.write.CsvWriter;
import runthrough.study.sweep.CaseResult;

/** CSV: a header, then a row for each case with a column for each path that any case sets. What does not apply is empty. */
public final class CsvSweep implements SweepLines {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator("").get();

    private static final Pattern START = Pattern.compile("(\\d{1,9}),(\\d{1,9}),([0-9a-f]+),(,|[^,]).*");
    private static final Pattern END = Pattern.compile("(.*),([0-9a-f]{8})");

    private final SweepName name;
    private final JsonShape<CaseResult> members;

    public CsvSweep(SweepName name) {
        this.name = name;
        this.members = CaseDocument.of(name);
    }

    @Override
    public String start() {
        return "case,of,";
    }

    @Override
    public Optional<String> header() {
        List<String> header = new ArrayList<>(List.of("case", "of", "sweep", "error"));
        name.paths().forEach(path -> header.add(CsvWriter.text(path)));
        header.addAll(members.names());
        header.add("check");
        return Optional.of(FORMAT.format(header.toArray()));
    }

    /** Whether {@code line} is the header of some sweep. */
    static boolean isHeader(String line) {
        return line.startsWith("case,of,sweep,error,") && line.endsWith(",check");
    }

    @Override
    public String line(CaseResult result) {
        List<String> cells = new ArrayList<>(List.of(
                Integer.toString(result.number()),
                Integer.toString(name.cases()),
                name.id(),
                CsvWriter.text(result.failure())));
        name.paths().forEach(path -> cells.add(CsvWriter.text(result.values().getOrDefault(path, ""))));
        members.fields(result, true).map().values().forEach(value -> cells.add(cell(value)));
        String text = FORMAT.format(cells.toArray());
        return text + "," + SweepLines.checkSum(text);
    }

    private static String cell(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        return value instanceof Double number ? Numbers.plain(number) : CsvWriter.text(value.toString());
    }

    /** What {@code line} of any sweep says of itself; empty where it is damaged. */
    static Optional<Stamp> stamp(String line) {
        return Stamp.read(line, START, END, ",");
    }

    @Override
    public Optional<Stamp> read(String line) {
        return stamp(line);
    }
}
