package runthrough;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Holds specification, classes and tests together: each rule of {@code src/docs/model.md} is cited by the class that implements
 * it, in a Javadoc comment, and by the test that fails without it, in a comment.
 */
class SpecificationTest {
    private static final Path SPECIFICATION = Path.of("src/docs/model.md");
    private static final Path CLASSES = Path.of("src/main/java");
    private static final Path TEMPLATES = Path.of("src/main/jte");
    private static final Path TESTS = Path.of("src/test/java");

    private static final Pattern DEFINITION = Pattern.compile("(?m)^\\s*[-|] \\*\\*`([A-Z]+-\\d+)`\\*\\*");
    private static final Pattern JAVADOC = Pattern.compile("(?s)/\\*\\*.*?\\*/");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|//[^\\n]*");
    private static final Pattern ALL = Pattern.compile("(?s).+");

    private final NavigableSet<String> rules = new TreeSet<>(definitions().toList());
    private final Pattern citation = Pattern.compile("\\b(" + groups() + ")-\\d+\\b");

    @Test
    void everyRuleIsDefinedOnce() {
        assertTrue(rules.size() > 100, "rules found in " + SPECIFICATION + ": " + rules.size());
        assertEquals(definitions().sorted().toList(), rules.stream().toList());
    }

    @Test
    void everyRuleIsCitedByAClass() {
        assertEquals("", missing(citations(CLASSES, JAVADOC)), "rules that no class under " + CLASSES + " cites");
    }

    /** So that the class that decides a rule is found among few: those that only use or show what it says do not cite it. */
    @Test
    void noRuleIsCitedByMoreThanTwoClasses() {
        SortedMap<String, NavigableSet<String>> classes = new TreeMap<>();
        citations(CLASSES, JAVADOC)
                .forEach((file, cited) -> cited.forEach(rule ->
                        classes.computeIfAbsent(rule, any -> new TreeSet<>()).add(file)));
        classes.values().removeIf(files -> files.size() <= 2);
        assertEquals(Map.of(), classes, "rules that more than two classes cite");
    }

    @Test
    void everyRuleIsCitedByATest() {
        assertEquals("", missing(citations(TESTS, COMMENT)), "rules that no test under " + TESTS + " cites");
    }

    @Test
    void everyCitationNamesARule() {
        SortedMap<String, NavigableSet<String>> cited = citations(CLASSES, ALL);
        cited.putAll(citations(TESTS, ALL));
        cited.putAll(citations(TEMPLATES, ALL));
        cited.putAll(citations(SPECIFICATION, ALL));
        cited.values().forEach(names -> names.removeAll(rules));
        cited.values().removeIf(NavigableSet::isEmpty);
        assertEquals(Map.of(), cited, "rules that are cited and not in " + SPECIFICATION);
    }

    private static Stream<String> definitions() {
        return DEFINITION.matcher(text(SPECIFICATION)).results().map(found -> found.group(1));
    }

    /** The groups of rules, such as COIL: what looks like a rule of another group is none, such as the source PA-12. */
    private String groups() {
        return rules.stream()
                .map(rule -> rule.substring(0, rule.indexOf('-')))
                .distinct()
                .collect(Collectors.joining("|"));
    }

    private String missing(SortedMap<String, NavigableSet<String>> cited) {
        Predicate<String> isCited = rule -> cited.values().stream().anyMatch(names -> names.contains(rule));
        return rules.stream().filter(isCited.negate()).collect(Collectors.joining(" "));
    }

    /** What the parts of each file under {@code folder} cite, by the file's path. */
    private SortedMap<String, NavigableSet<String>> citations(Path folder, Pattern parts) {
        try (Stream<Path> files = Files.walk(folder)) {
            SortedMap<String, NavigableSet<String>> cited = new TreeMap<>();
            // What a package cites says nothing of where in it a rule is.
            files.filter(file -> Files.isRegularFile(file) && !file.endsWith("package-info.java"))
                    .forEach(file -> {
                        String text = String.join("\n", matches(parts, text(file)));
                        cited.put(file.toString(), new TreeSet<>(matches(citation, text)));
                    });
            return cited;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> matches(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(MatchResult::group).toList();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
