package runthrough.report.described;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import runthrough.plant.SimulationRequest;
import runthrough.report.described.DescribedValues.Name;
import runthrough.report.described.DescribedValues.Value;

/**
 * What is described otherwise in some lines than in another, value by value, in the terms of the trade; a value that was left
 * out of the description stands with its default. Of a part that one line has and another has not only the main values are
 * given, and those in which the lines that have it differ.
 */
public final class LineDifferences {
    private static final String NONE = "none";

    private final List<Map<Name, Value>> lines;
    private final List<Set<String>> parts;

    private LineDifferences(List<Map<Name, Value>> lines) {
        this.lines = lines;
        this.parts = lines.stream()
                .map(line -> line.keySet().stream().map(Name::part).collect(Collectors.toSet()))
                .toList();
    }

    /**
     * A value that is not the same in all.
     *
     * @param what it is
     * @param present in the line that the others are held against, with its unit
     * @param others in each of the others; empty where it is the same
     */
    public record Row(String what, String present, List<String> others) {
        public Row {
            others = List.copyOf(others);
        }
    }

    /** What {@code others} have otherwise than {@code present}. */
    public static List<Row> of(SimulationRequest present, List<SimulationRequest> others) {
        InputTexts texts = new InputTexts(present.resultsIn());
        return new LineDifferences(Stream.concat(Stream.of(present), others.stream())
                        .map(request -> DescribedValues.of(request, texts))
                        .toList())
                .rows();
    }

    private List<Row> rows() {
        Set<Name> names = new LinkedHashSet<>();
        lines.forEach(line -> names.addAll(line.keySet()));
        return names.stream()
                .filter(this::isOfAccount)
                .map(this::row)
                .filter(row -> row.others().stream().anyMatch(text -> !text.isEmpty()))
                .toList();
    }

    private boolean isOfAccount(Name name) {
        List<Integer> there = all().filter(line -> parts.get(line).contains(name.part()))
                .boxed()
                .toList();
        boolean isGiven = lines.stream()
                .map(line -> line.get(name))
                .filter(Objects::nonNull)
                .anyMatch(Value::given);
        if (isGiven && there.stream().map(line -> text(line, name)).distinct().count() > 1) {
            return true;
        }
        boolean isLacking = all().filter(
                        line -> name.within().isEmpty() || parts.get(line).contains(name.within()))
                .anyMatch(line -> !parts.get(line).contains(name.part()));
        return isLacking
                && lines.stream()
                        .map(line -> line.get(name))
                        .filter(Objects::nonNull)
                        .anyMatch(Value::main);
    }

    private IntStream all() {
        return IntStream.range(0, lines.size());
    }

    private String text(int line, Name name) {
        Value value = lines.get(line).get(name);
        return value == null || value.text().isEmpty() ? NONE : value.text();
    }

    private Row row(Name name) {
        String present = text(0, name);
        return new Row(
                name.words(),
                present,
                all().skip(1)
                        .mapToObj(line -> text(line, name))
                        .map(text -> text.equals(present) ? "" : text)
                        .toList());
    }
}
