package runthrough;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words that {@code src/docs/terms.md} gives up are in no code, text or document; it names the word to use instead. */
class GivenUpWordsTest {

    private static final List<String> COVERED =
            List.of("src", "scenarios", "README.md", "DEVELOPERS.md", "pom.xml", "reports/validation.html");

    private static final String OWN_STOP = "own stop*";
    private static final String JOINT_TIME = "joint time*";
    private static final String SPOILT = "spoilt";
    private static final String LUCK = "luck*";

    /**
     * By the end of a file's path, the words that may stand in it: what an old key or command is called now, the names of sources of
     * random numbers, from which the numbers follow, and the names that the second engine has chosen for itself.
     */
    private static final Map<String, Set<String>> EXCEPTIONS = Map.ofEntries(
            entry("scenario/grammar/FormerNames.java", OWN_STOP, SPOILT, JOINT_TIME),
            entry("scenario/BadKeysTest.java", OWN_STOP, SPOILT),
            entry("scenario/SettingMessagesTest.java", OWN_STOP, JOINT_TIME),
            entry("cli/failure/FormerCommands.java", LUCK),
            entry("cli/CommandLineTest.java", LUCK),
            entry("simulation/random/SourceNames.java", OWN_STOP),
            entry("simulation/random/SourceNumbersTest.java", OWN_STOP),
            entry("simulation/random/RandomNumbersTest.java", OWN_STOP),
            entry("simulation/DrawTableTest.java", OWN_STOP),
            entry("src/docs/model.md", OWN_STOP),
            entry("crosscheck/DescribedLine.java", OWN_STOP, SPOILT),
            entry("crosscheck/Disagreement.java", OWN_STOP, SPOILT));

    private static Map.Entry<String, Set<String>> entry(String file, String... words) {
        return Map.entry(file, Set.of(words));
    }

    /** An author's name and the title of a paper. */
    private static final Pattern CITATIONS = Pattern.compile("A\\. M\\. Law\\b|\\| Law[ ,]|law of succession");

    private static final Path TERMS = Path.of("src/docs/terms.md");
    private static final String TABLE = "## Words that were given up";
    private static final Pattern READABLE =
            Pattern.compile(".*\\.(java|jte|js|html|css|svg|properties|md|yaml|csv|json|xml)");

    private final Map<String, String> givenUp = givenUp();
    private final List<String> words = List.copyOf(givenUp.keySet());
    private final Pattern any = pattern(words);

    @Test
    void noGivenUpWordIsLeft() throws IOException {
        List<String> found = new ArrayList<>();
        for (String place : COVERED) {
            for (Path file : files(Path.of(place))) {
                if (file.endsWith("GivenUpWordsTest.java")) {
                    continue;
                }
                String text = Files.readString(file);
                find(file.toString(), file.equals(TERMS) ? text.substring(0, text.indexOf(TABLE)) : text, found);
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void wordsAreFoundInEverySpelling() {
        List<String> found = new ArrayList<>();
        find("X.java", "// own\n    // stop\nownStops OWN_STOP own-stop\n\"by \"\n  + \"hand\"; law; lawn", found);
        assertThat(found.stream().map(text -> text.substring(0, text.indexOf(' '))))
                .containsExactlyInAnyOrder(
                        "X.java:1:", "X.java:3:", "X.java:3:", "X.java:3:", "X.java:4:", "X.java:5:");
    }

    private void find(String file, String text, List<String> found) {
        Set<String> allowed = EXCEPTIONS.entrySet().stream()
                .filter(exception -> file.endsWith(exception.getKey()))
                .flatMap(exception -> exception.getValue().stream())
                .collect(Collectors.toSet());
        String plain = plain(text);
        Matcher matcher = any.matcher(plain);
        while (matcher.find()) {
            int place = IntStream.range(0, words.size())
                    .filter(word -> matcher.group(word + 1) != null)
                    .findFirst()
                    .orElseThrow();
            String word = words.get(place);
            if (!allowed.contains(word)) {
                long line = 1
                        + plain.substring(0, matcher.start())
                                .chars()
                                .filter(c -> c == '\n')
                                .count();
                found.add(file + ":" + line + ": '" + word + "' was given up; use: " + givenUp.get(word));
            }
        }
    }

    /** Lower case, words of a name apart, and no mark of a comment or of a broken text between two words; lines stay. */
    private static String plain(String text) {
        return CITATIONS
                .matcher(text)
                .replaceAll(" ")
                .replaceAll("(?m)^[ \\t]*(\\*|//|#)+", " ")
                .replaceAll("\"\\s*?\n\\s*\\+ \"", "\n")
                .replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ")
                .replaceAll("[-_]", " ")
                .toLowerCase(Locale.ROOT);
    }

    /** A group for each word. */
    private static Pattern pattern(List<String> words) {
        return Pattern.compile(words.stream()
                .map(word -> "(" + word.replace(" ", "\\s+").replace("*", "[a-z]*") + ")")
                .collect(Collectors.joining("|", "(?<![a-z])(?:", ")(?![a-z])")));
    }

    private static Map<String, String> givenUp() {
        try (Stream<String> lines = Files.lines(TERMS)) {
            Map<String, String> words = lines.dropWhile(line -> !line.equals(TABLE))
                    .filter(line -> line.startsWith("| "))
                    .skip(1)
                    .map(line -> line.split(" *\\| *"))
                    .collect(Collectors.toMap(cells -> cells[1], cells -> cells[2]));
            assertThat(words).hasSizeGreaterThan(20);
            return words;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(Path place) throws IOException {
        try (Stream<Path> files = Files.walk(place)) {
            return files.filter(file -> READABLE.matcher(file.toString()).matches())
                    .sorted()
                    .toList();
        }
    }
}
