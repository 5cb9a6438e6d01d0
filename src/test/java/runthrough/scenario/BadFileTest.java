package runthrough.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no scenario at all. Whatever they hold, reading ends soon and with a message. */
@Timeout(value = 20, unit = TimeUnit.SECONDS)
class BadFileTest {

    @TempDir
    private Path folder;

    private Written written = new Written(Path.of("."));

    @BeforeEach
    void writeIntoTheFolder() {
        written = new Written(folder);
    }

    @Test
    void aMissingFileIsAnsweredWithTheNearestName() {
        written.file("tube-line.yaml", Written.with());

        assertThat(written.refusal(folder.resolve("tube-lnie.yaml")))
                .containsExactly("tube-lnie.yaml: there is no such file. Did you mean tube-line.yaml?");
        assertThat(written.refusal(folder.resolve("quite-another")))
                .containsExactly("quite-another: there is no such file. Give the name of a scenario file.");
        assertThat(written.refusal(folder.resolve("nowhere/tube-line.yaml")))
                .containsExactly("nowhere/tube-line.yaml: there is no such file. There is no folder nowhere either.");
    }

    @Test
    void aLinkThatLeadsToNoFileIsSaidToBeOne() throws IOException {
        Path itself = folder.resolve("loop.yaml");
        Files.createSymbolicLink(itself, itself.getFileName());
        Path nowhere = Files.createSymbolicLink(folder.resolve("away.yaml"), folder.resolve("gone.yaml"));

        assertThat(written.refusal(itself))
                .containsExactly("loop.yaml: is a link that leads back to itself. Give the scenario file itself.");
        assertThat(written.refusal(nowhere))
                .containsExactly("away.yaml: is a link that leads nowhere. Give the scenario file itself.");
    }

    @Test
    void aDirectoryIsNoFile() {
        assertThat(ScenarioFile.open(folder).read())
                .isInstanceOfSatisfying(
                        ScenarioReading.Refused.class,
                        refused -> assertThat(refused.problems())
                                .singleElement()
                                .asString()
                                .endsWith(": is a directory. Give the scenario file itself."));
    }

    @Test
    void anUnreadableFileIsSaidToBeOne() throws IOException {
        Path file = written.file("line.yaml", Written.with());
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeTrue(!Files.isReadable(file), "whoever runs this test may read everything");

        assertThat(written.refusal(file)).containsExactly("line.yaml: may not be read. Ask for permission to read it.");
    }

    @Test
    void aFileWhoseReadingFailsIsSaidToFail() {
        // On Linux a file that looks like any other, and of which the first byte cannot be read.
        Path file = Path.of("/proc/self/mem");
        assumeTrue(Files.exists(file), "this machine is no Linux");

        assertThat(ScenarioFile.open(file).read())
                .isInstanceOfSatisfying(
                        ScenarioReading.Refused.class,
                        refused -> assertThat(refused.problems())
                                .singleElement()
                                .asString()
                                .startsWith("/proc/self/mem: cannot be read (")
                                .endsWith("). Check the disk or the connection."));
    }

    @Test
    void aFileOfAHundredMegabytesIsRefusedByItsSizeUnread() throws IOException {
        Path file = folder.resolve("line.yaml");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(100_000_000);
        }

        assertThat(written.refusal(file))
                .containsExactly("line.yaml: is larger than a scenario may be, 1 MB. "
                        + "Give another file, or leave out what is not needed.");
    }

    @Test
    void aScheduleThatIsTooLargeIsRefusedByItsSizeUnread() throws IOException {
        try (RandomAccessFile large =
                new RandomAccessFile(folder.resolve("coils.csv").toFile(), "rw")) {
            large.setLength(1_000_000_000);
        }

        assertThat(written.refusal(Written.without("coil") + "coils: {schedule: coils.csv}\n"))
                .containsExactly("line.yaml:8:19 coils.schedule = coils.csv; is larger than a schedule may be, 500 MB. "
                        + "Give another file, or leave out what is not needed.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n", "\uFEFF", "\"\""})
    void anEmptyFileIsSaidToBeEmpty(String text) {
        assertThat(written.refusal(text))
                .singleElement()
                .asString()
                .startsWith("line.yaml:")
                .contains("empty");
    }

    @Test
    void aByteOrderMarkDoesNoHarm() {
        assertThat(written.warnings("\uFEFF" + Written.with())).isEmpty();
        assertThat(written.refusal("\uFEFFtitle: x\ntitle: y\n"))
                .anyMatch(problem -> problem.startsWith("line.yaml:2:1 title = y;"));
    }

    @Test
    void windowsLineEndsDoNoHarm() {
        assertThat(written.warnings(Written.with().replace("\n", "\r\n"))).isEmpty();
    }

    @Test
    void textThatIsNotUtf8IsShownWhereItIsNot() throws IOException {
        Path file = folder.resolve("line.yaml");
        Files.write(file, Written.with("notes: Fläche").getBytes(StandardCharsets.ISO_8859_1));

        assertThat(written.refusal(file))
                .containsExactly(
                        "line.yaml:8:10: the text is not UTF-8; it looks like the older encoding of a spreadsheet"
                                + " (Windows-1252, Latin-1). Save the file with the encoding UTF-8.");
    }

    @Test
    void utf16IsNotUtf8() throws IOException {
        Path file = folder.resolve("line.yaml");
        Files.write(file, Written.with().getBytes(StandardCharsets.UTF_16));

        assertThat(written.refusal(file))
                .containsExactly(
                        "line.yaml:1:1: the text is not UTF-8 but UTF-16. Save the file with the encoding UTF-8.");
    }

    @Test
    void aControlCharacterIsShownWhereItStands() {
        assertThat(written.refusal("title: a\nnotes: b\u0000c\n"))
                .containsExactly("line.yaml:2:9: holds a control character (U+0000). Give a plain text file in UTF-8.");
    }

    @Test
    void aLetterThatCannotBeShownIsRefused_alsoByAnEscape() {
        assertThat(written.refusal("title: a\nnotes: \"b\\ec\"\n"))
                .containsExactly("line.yaml:2:8: holds a control character (U+001B). Write it without.");
        assertThat(written.refusal("title: \"half \\uD83E\"\n"))
                .containsExactly("line.yaml:1:8: holds half of a letter (U+D83E). Write it without.");
        assertThat(written.warnings(Written.with("notes: \"\\uD83E\\uDDF5 and \\t more\"")))
                .isEmpty();
    }

    @Test
    void aKeyStandsInOneLine() {
        assertThat(written.refusal("title: a\n\"no\\ntes\": b\n"))
                .containsExactly(
                        "line.yaml:2:1: a key must stand in one line, without tabs. Write a blank in their place.");
        assertThat(written.refusal("title: a\n? |\n  notes\n: b\n"))
                .containsExactly(
                        "line.yaml:2:3: a key must stand in one line, without tabs. Write a blank in their place.");
    }

    @Test
    void aKeyIsAWord() {
        assertThat(written.refusal("title: a\n\" \": b\n"))
                .containsExactly("line.yaml:2:1: a key must be a word. Write it as \"key: value\".");
        assertThat(written.refusal(Written.with().replace("{join:", "{jo\tin:")))
                .singleElement()
                .asString()
                .endsWith(": a key must stand in one line, without tabs. Write a blank in their place.");
    }

    /** Blanks of any width, and letters without one. */
    @ParameterizedTest
    @ValueSource(strings = {" ", "\\u00a0", "\\u200b", "\\u2003\\ufeff"})
    void whatCannotBeSeenIsNoName(String nothing) {
        assertThat(written.refusal(Written.with("title: \"" + nothing + "\"")))
                .singleElement()
                .asString()
                .contains("title", "has no value; must be");
        assertThat(written.refusal(Written.with().replace("{join: 50", "{\"" + nothing + "\": 50")))
                .isNotEmpty();
    }

    @Test
    void theNameOfAWorkElementHasItsBounds() {
        assertThat(written.warnings(Written.with().replace("{join: 50", "{" + "j".repeat(200) + ": 50")))
                .isEmpty();
        assertThat(written.refusal(Written.with().replace("{join: 50", "{" + "j".repeat(201) + ": 50")))
                .singleElement()
                .asString()
                .endsWith(
                        "the name of a work element must have 1 to 200 letters in one line, without tabs. Call it otherwise.");
    }

    /** A break within blanks is looked for in no more steps than there are letters. */
    @Test
    @Timeout(10)
    void aTextOfManyBlanksIsReadAtOnce() {
        assertThat(written.refusal("title: a" + " ".repeat(900_000) + "b\n"))
                .anyMatch(problem -> problem.contains("must be no longer than 2000 characters"));
    }

    @Test
    void fiveThousandNestedBracketsAreTooDeep() {
        assertThat(written.refusal("a: " + "[".repeat(5000)))
                .containsExactly("line.yaml:1:23: is nested deeper than 20 levels. Check brackets and indentation.");
        assertThat(written.refusal("{a: ".repeat(5000)))
                .singleElement()
                .asString()
                .contains("is nested deeper than 20 levels");
    }

    @Test
    void aliasesAreNotFollowedSoThatNoneCanExplode() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++) {
            bomb.append(String.format("a%d: &a%d [*a%d, *a%d]%n", i, i, i - 1, i - 1));
        }

        assertThat(written.refusal(bomb.toString()))
                .containsExactly("line.yaml:2:10: aliases (*name) are not read. "
                        + "Write the value out; coils can share defaults.");
    }

    @Test
    void tagsAreNotRead() {
        assertThat(written.refusal("title: !!java.io.File [x]"))
                .containsExactly(
                        "line.yaml:1:8: tags (tag:yaml.org,2002:java.io.File) are not read. Write the plain value.");
    }

    @Test
    void aTabIsSaidToBeOne() {
        assertThat(written.refusal("title: a\ncoil:\n\tthickness: 2 mm\n"))
                .containsExactly("line.yaml:3:1: a tab stands where spaces are expected. Indent with spaces.");
    }

    @Test
    void aSecondDocumentIsRefused() {
        assertThat(written.refusal(Written.with() + "---\ntitle: another\n"))
                .containsExactly("line.yaml:8:1: a second document begins here. Keep one scenario to a file.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "title: a\n  b: c: d\n",
                "coil: {thickness: 2 mm\n",
                "title: \"a\n",
                "a:\n - b\n c: d\n",
                "@a: b",
                "%a\n",
                "? [a]\n: b\n"
            })
    void whatIsNotYamlIsShownWithLineAndColumn(String text) {
        assertThat(written.refusal(text)).singleElement().asString().matches("line\\.yaml:\\d+:\\d+: .*\\. .*\\.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"just text", "[a, b]", "42"})
    void yamlThatIsNoGroupOfKeysIsNoScenario(String text) {
        assertThat(written.refusal(text))
                .singleElement()
                .asString()
                .contains(
                        "must be a group of keys such as title, coil, entry. Begin with a copy of a shipped scenario.");
    }
}
