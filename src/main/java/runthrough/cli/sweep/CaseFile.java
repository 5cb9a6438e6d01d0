package runthrough.cli.sweep;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.Environment;
import runthrough.cli.terminal.InputFile;
import runthrough.scenario.source.CsvTable;
import runthrough.scenario.source.Place;
import runthrough.scenario.source.Problems;
import runthrough.scenario.source.Raw;
import runthrough.scenario.source.TextFile;
import runthrough.study.sweep.Cases;

/**
 * Cases one by one in a file: JSON Lines, an object of values by path for each; or CSV, a row for each under a header of paths,
 * which may have a unit behind them as in {@code entry.top-speed [m/min]}. A value that is null or empty is as the scenario says.
 */
public final class CaseFile {
    private static final int LARGEST = 500_000_000;
    private static final Pattern WITH_UNIT = Pattern.compile("(.*\\S)\\s+\\[([^]]+)]");

    private final TextFile file;
    private final Problems problems;

    private CaseFile(TextFile file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /**
     * Reads {@code given} by the user.
     *
     * @throws BadInputException with everything that is wrong with it
     */
    public static Cases read(Path given, Environment environment) {
        Problems problems = new Problems();
        InputFile input = InputFile.of(given, LARGEST, environment);
        String name = input.path().toString();
        Optional<TextFile> text = input.piped()
                .map(bytes -> TextFile.of(bytes, name, "cases", LARGEST, problems))
                .orElseGet(() -> TextFile.read(input.path(), name, "cases", LARGEST, problems));
        List<Map<String, String>> cases =
                text.map(found -> new CaseFile(found, problems).cases()).orElse(List.of());
        if (problems.none() && cases.isEmpty()) {
            problems.error(Place.whole(name), "", "", "holds no case", "Give a line for each.");
        }
        BadInputException.throwIfAny(problems);
        return Cases.listed(cases);
    }

    private List<Map<String, String>> cases() {
        return file.text().stripLeading().startsWith("{") ? ofJson() : ofTable();
    }

    private List<Map<String, String>> ofJson() {
        JsonMapper mapper = new JsonMapper();
        List<Map<String, String>> cases = new ArrayList<>();
        int number = 0;
        for (String line : file.text().lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            try {
                JsonNode node = mapper.readTree(line);
                if (node.isObject()) {
                    cases.add(ofObject(node));
                    continue;
                }
            } catch (JsonProcessingException e) {
                // Reported below, like what is another kind of value.
            }
            problems.error(
                    new Place(file.name(), number, 1),
                    "",
                    line,
                    "is not an object of JSON on one line",
                    "Write it like {\"entry.top-speed\": \"100 m/min\", \"coil-change.crew\": 2}.");
        }
        return cases;
    }

    private static Map<String, String> ofObject(JsonNode object) {
        Map<String, String> values = new LinkedHashMap<>();
        object.properties().stream()
                .filter(member -> !member.getValue().isNull())
                .forEach(member -> values.put(
                        member.getKey().strip(),
                        onOneLine(
                                member.getValue().isValueNode()
                                        ? member.getValue().asText()
                                        : member.getValue().toString())));
        return values;
    }

    private List<Map<String, String>> ofTable() {
        return CsvTable.read(file, CsvTable.separator(file), "case", problems)
                .map(table -> table.rows().stream()
                        .map(row -> ofRow(table.header(), row))
                        .toList())
                .orElse(List.of());
    }

    private Map<String, String> ofRow(List<Raw.Scalar> header, CsvTable.Row row) {
        Map<String, String> values = new LinkedHashMap<>();
        if (row.cells().size() > header.size()) {
            problems.error(
                    row.place(),
                    "",
                    "",
                    "the row has more cells than the header has columns, " + header.size(),
                    "Check the separators; put a value that holds one in quotes.");
        }
        for (int i = 0; i < Math.min(header.size(), row.cells().size()); i++) {
            String value = onOneLine(row.cells().get(i).text());
            Matcher unit = WITH_UNIT.matcher(header.get(i).text().strip());
            if (!value.isEmpty()) {
                values.put(
                        unit.matches() ? unit.group(1) : header.get(i).text().strip(),
                        unit.matches() ? value + " " + unit.group(2) : value);
            }
        }
        return values;
    }

    private static String onOneLine(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }
}
