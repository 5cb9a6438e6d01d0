package runthrough.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code src/docs/guide.md} says what is so: its commands run, and outputs, numbers, files and charts are the program's. */
class GuideTest {
    private static final Pattern TAG = Pattern.compile("<[^>]*>");
    private static final Pattern PORT = Pattern.compile("(127\\.0\\.0\\.1):\\d+");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.:]\\d+)*(?: \\d{3})*");
    private static final Pattern STANDARD = Pattern.compile("(?:EN|ISO|OSHA) [\\d.-]+");
    /** Numbers that count steps, and what stands in links. */
    private static final Pattern NO_CLAIM =
            Pattern.compile("(?m)^## \\d\\. |\\| \\[\\d]|\\([^)]*\\.md[^)]*\\)|\\(#[^)]*\\)|step \\d");

    private static final Pattern TARGET = Pattern.compile("]\\(([^)#]*)(?:#([^)]*))?\\)");

    private static final int LARGEST_PICTURE = 250_000;
    private static final int ALL_PICTURES = 1_500_000;

    @TempDir
    private static Path folder;

    private static Guide guide;
    private static GuideWalk walk;

    @BeforeAll
    static void walk() throws IOException, InterruptedException {
        guide = Guide.read();
        walk = new GuideWalk(folder);
        walk.walk(guide);
    }

    @Test
    void everyCommandCanBeRun() {
        assertThat(walk.commands())
                .hasSizeGreaterThan(15)
                .allSatisfy(ran -> assertThat(ran.code()).as(ran.toString()).isZero());
    }

    @Test
    void whatIsShownIsWhatTheProgramSays() {
        assertThat(walk.commands())
                .allSatisfy(ran -> assertThat(ran.shown())
                        .allSatisfy(shown -> assertThat(whatWasSaid(ran, shown)).containsSubsequence(pieces(shown))));
    }

    /** What stands on the page alone is found there without the breaks of its lines. */
    private static String whatWasSaid(GuideWalk.Ran ran, String shown) {
        String out = PORT.matcher(ran.out()).replaceAll("$1:8417");
        String page = plain(TAG.matcher(ran.page()).replaceAll(""));
        return page.contains(plain(shown)) ? shown : out;
    }

    private static String plain(String text) {
        return text.replace("&#34;", "\"").replaceAll("(?U)\\s+", " ").strip();
    }

    /** What stands between the lines left out. */
    private static List<String> pieces(String shown) {
        return Pattern.compile("(?m)^\\.\\.\\.\\n")
                .splitAsStream(shown)
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    /** Every number of the text stands in a file, in a command or in an output beside it. */
    @Test
    void everyNumberOfTheTextIsShown() {
        Set<String> shown = guide.steps().stream()
                .filter(step -> step.kind() != Guide.Kind.PICTURE)
                .flatMap(step -> numbers(step.text()))
                .collect(Collectors.toSet());
        String claims =
                NO_CLAIM.matcher(STANDARD.matcher(guide.prose()).replaceAll("")).replaceAll("");

        assertThat(numbers(claims)).hasSizeGreaterThan(30).isSubsetOf(shown);
    }

    private static Stream<String> numbers(String text) {
        return NUMBER.matcher(text).results().map(MatchResult::group);
    }

    @Test
    void theFilesAreThoseThatTheReaderTypes() throws IOException {
        for (String name : List.of(Guide.SCENARIO, Guide.SHEET)) {
            assertThat(Guide.FOLDER.resolve(name)).hasSameBinaryContentAs(folder.resolve(name));
        }
    }

    @Test
    void everyChartIsThatOfTheProgram() {
        assertThat(walk.drawings())
                .hasSizeGreaterThan(7)
                .allSatisfy((file, svg) -> assertThat(Guide.FOLDER.resolve(file))
                        .as("made by mvn -P guide test")
                        .hasBinaryContent(svg.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void everyPictureIsThereIsShownAndIsSmall() throws IOException {
        List<String> expected = new ArrayList<>(guide.all(Guide.Kind.PICTURE));
        expected.addAll(List.of(Guide.SCENARIO, Guide.SHEET));
        try (Stream<Path> files = Files.list(Guide.FOLDER)) {
            List<Path> found = files.toList();
            assertThat(found)
                    .extracting(file -> file.getFileName().toString())
                    .containsExactlyInAnyOrderElementsOf(expected);
            assertThat(found)
                    .allSatisfy(file -> assertThat(file.toFile().length())
                            .as(file.toString())
                            .isBetween(1L, (long) LARGEST_PICTURE));
            assertThat(found.stream().mapToLong(file -> file.toFile().length()).sum())
                    .isLessThan(ALL_PICTURES);
        }
    }

    @Test
    void everyStepHasItsPicture() {
        assertThat(guide.text().split("(?m)^## \\d\\. "))
                .hasSize(9)
                .satisfies(steps ->
                        assertThat(Arrays.asList(steps).subList(1, 9)).allMatch(step -> step.contains("](guide/")));
    }

    @Test
    void linksLeadSomewhere() throws IOException {
        for (MatchResult link : TARGET.matcher(guide.text()).results().toList()) {
            Path file = link.group(1).isEmpty()
                    ? Guide.FILE
                    : Guide.FILE.resolveSibling(link.group(1)).normalize();
            assertThat(file).exists();
            if (link.group(2) != null) {
                assertThat(anchors(file)).contains(link.group(2));
            }
        }
    }

    private static List<String> anchors(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .filter(line -> line.startsWith("#"))
                .map(line -> line.replaceFirst("#+ ", "")
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9 -]", "")
                        .replace(' ', '-'))
                .toList();
    }
}
