package runthrough.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runthrough.quantity.Dimension;
import runthrough.scenario.grammar.DistributionShape;
import runthrough.scenario.grammar.Key;
import runthrough.scenario.grammar.Section;
import runthrough.scenario.grammar.Ways;

/** What a scenario may say, for people: every section with its keys, their meaning, range, default and an example. */
public final class ScenarioGuide {

    private static final int WIDTH = 100;
    private static final String INDENT = "      ";

    private final StringBuilder out = new StringBuilder();
    /** Section in which a key was listed first, by name and meaning, so that none is listed twice. */
    private final Map<String, String> listed = new HashMap<>();

    private ScenarioGuide() {}

    /** The whole listing. */
    public static String text() {
        ScenarioGuide guide = new ScenarioGuide();
        guide.introduction();
        DistributionShape.listed().forEach(guide::section);
        sections().values().forEach(guide::section);
        return guide.out.toString();
    }

    /** The names of all parts of the listing, in its order: those of the sections, and "units". */
    public static List<String> names() {
        return parts().map(ScenarioGuide::name).toList();
    }

    /** What the listing says of {@code name} and of the sections within it; empty when there is no such part. */
    public static String text(String name) {
        return parts().filter(part -> name(part).equals(name) || name(part).startsWith(name + "."))
                .collect(Collectors.joining("\n"));
    }

    /** The paragraphs of the listing but for the introduction, each with its line end. */
    private static Stream<String> parts() {
        return Stream.of(text().split("\n(?=\n)")).skip(1).map(part -> part.strip() + "\n");
    }

    private static String name(String part) {
        String heading = part.lines().findFirst().orElse("").replaceAll(":.*", "");
        return heading.toLowerCase(Locale.ROOT);
    }

    /** Every section by its name, outer ones before those within. */
    private static Map<String, Section> sections() {
        Map<String, Section> sections = new LinkedHashMap<>();
        collect(ScenarioKeys.SCENARIO, sections);
        return sections;
    }

    private static void collect(Section section, Map<String, Section> sections) {
        if (sections.putIfAbsent(section.name(), section) == null) {
            section.keys().forEach(key -> key.shape().sections().forEach(inner -> collect(inner, sections)));
        }
    }

    private void introduction() {
        paragraph(
                "",
                "A scenario is a YAML file in UTF-8. A quantity is a number with its unit, such as 45 m/min;"
                        + " decimals have a point. A time may be minutes and seconds, such as 1:30 min. Metric and US customary units may be mixed. A # begins a comment.");
        out.append("\nUnits\n");
        for (Dimension dimension : Dimension.values()) {
            if (dimension != Dimension.MASS_RATE && dimension != Dimension.FORCE) {
                out.append(String.format("  %-14s%s%n", dimension.label(), dimension.unitList())
                        .replace("\r\n", "\n"));
            }
        }
    }

    private void section(Section section) {
        out.append('\n');
        paragraph(
                "",
                section.name().isEmpty()
                        ? "Top level: " + section.meaning()
                        : section.name() + ": " + section.meaning());
        section.keys().forEach(key -> listed.putIfAbsent(id(key), section.name()));
        Map<String, List<Key<?>>> byHome = section.keys().stream()
                .collect(Collectors.groupingBy(key -> listed.get(id(key)), TreeMap::new, Collectors.toList()));
        // What another section lists is not listed again, where it is all of that.
        byHome.entrySet()
                .removeIf(shared -> shared.getKey().equals(section.name())
                        || shared.getValue().size() < Collections.frequency(listed.values(), shared.getKey()));
        section.keys().stream()
                .filter(key -> !byHome.containsKey(listed.get(id(key))))
                .forEach(this::key);
        byHome.keySet()
                .forEach(home -> out.append("  and the keys of ").append(home).append('\n'));
        for (Ways ways : section.ways()) {
            paragraph("  ", (ways.required() ? "Give exactly one of: " : "Give at most one of: ") + ways.words() + ".");
        }
    }

    private static String id(Key<?> key) {
        return key.name() + "|" + key.meaning();
    }

    private void key(Key<?> key) {
        paragraph("  ", key.name() + ": " + key.meaning());
        List<String> facts = new ArrayList<>(List.of(key.shape().allowed()));
        if (key.need() == Key.Need.REQUIRED) {
            facts.add("required");
        } else if (!key.byDefault().isEmpty()) {
            facts.add(key.need() == Key.Need.DEPENDS ? key.byDefault() : "default: " + key.byDefault());
        }
        if (!key.example().isEmpty()) {
            facts.add("such as " + key.example());
        }
        paragraph(INDENT, String.join("; ", facts));
    }

    /** Adds {@code text}, wrapped and indented. */
    private void paragraph(String indent, String text) {
        int column = WIDTH;
        for (String word : text.split(" ", -1)) {
            boolean isFull = column + 1 + word.length() > WIDTH;
            if (isFull) {
                out.append(out.isEmpty() || out.charAt(out.length() - 1) == '\n' ? "" : "\n")
                        .append(indent);
                column = indent.length();
            } else {
                out.append(' ');
                column++;
            }
            out.append(word);
            column += word.length();
        }
        out.append('\n');
    }
}
