package runthrough.report.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckFolderTest {
    static final Reference BOOK = new Reference("A book, 1999, ch. 3", Standing.READ);

    @TempDir
    private Path folder;

    static Recorded.OfNumber number(Topic topic, String id, double expected, double got) {
        return new Recorded.OfNumber(topic, id, "length", BOOK, "m", expected, got, 1e-6, "digits printed", 0);
    }

    private static Recorded.OfErrors errors(Double... errors) {
        return new Recorded.OfErrors(Topic.TWO_WAYS, "A1", "all", BOOK, "line", 1e-9, "by rule", List.of(errors));
    }

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        List<Recorded> records = List.of(
                number(Topic.KINEMATICS, "K01", 0.1, Double.NaN),
                errors(0.0, 1e-300, 1e-12),
                new Recorded.OfText(Topic.RANDOM_NUMBERS, "R2", "state", BOOK, "1, \"2\"", "1, 2"));
        new CheckFolder(folder.resolve("new")).write("SomeTest", records);

        assertThat(new CheckFolder(folder.resolve("new")).read()).isEqualTo(records);
    }

    @Test
    void recordsComeInTheOrderOfThePage_whateverOrderTheTestsRanIn() throws IOException {
        CheckFolder checks = new CheckFolder(folder);
        checks.write("ATest", List.of(number(Topic.WORK, "W1", 1, 1), number(Topic.KINEMATICS, "K10", 1, 1)));
        checks.write("BTest", List.of(number(Topic.KINEMATICS, "K9", 1, 1), number(Topic.KINEMATICS, "GA1", 1, 1)));

        assertThat(checks.read()).extracting(Recorded::id).containsExactly("GA1", "K9", "K10", "W1");
    }

    @Test
    void sameRecordsGiveTheSameBytesInAnyOrder() throws IOException {
        Recorded one = number(Topic.KINEMATICS, "K1", 1, 1);
        Recorded two = number(Topic.KINEMATICS, "K2", 1, 1);
        CheckFolder checks = new CheckFolder(folder);
        checks.write("ATest", List.of(one, two));
        checks.write("BTest", List.of(two, one));

        assertThat(folder.resolve("ATest.jsonl")).hasSameBinaryContentAs(folder.resolve("BTest.jsonl"));
    }

    @Test
    void checksPassWithinTheirToleranceAndNoNumberNever() {
        assertThat(number(Topic.WORK, "W1", 1, 1 + 0.9e-6).passed()).isTrue();
        assertThat(number(Topic.WORK, "W1", 1, 1 + 1.1e-6).passed()).isFalse();
        assertThat(number(Topic.WORK, "W1", 1, Double.NaN).passed()).isFalse();
        assertThat(errors(0.0, 1e-9).passed()).isTrue();
        assertThat(errors(0.0, 1.1e-9).passed()).isFalse();
        assertThat(errors(0.0, Double.NaN).passed()).isFalse();
    }

    @Test
    void noFolderOrNoRecords_saysWhoWritesThem() {
        assertThatThrownBy(() -> new CheckFolder(folder.resolve("none")).read())
                .isInstanceOf(CheckFolderException.class)
                .hasMessage(
                        folder.resolve("none")
                                + " does not exist. The tests write it: run mvn verify in the sources first, or name another folder.");
        assertThatThrownBy(() -> new CheckFolder(folder).read()).hasMessageContaining("holds no records of checks");
    }

    @Test
    void aLineThatIsNoRecord_isNamed() throws IOException {
        Files.writeString(folder.resolve("XTest.jsonl"), "{\"kind\":\"opinion\"}\n");

        assertThatThrownBy(() -> new CheckFolder(folder).read())
                .isInstanceOf(CheckFolderException.class)
                .hasMessageContaining("XTest.jsonl:1 is not the record of a check")
                .hasMessageContaining("Delete the folder and run mvn verify.");
    }

    @Test
    void toleranceThatIsNoNumber_isRefused() {
        assertThatThrownBy(() -> new Recorded.OfNumber(Topic.WORK, "W1", "time", BOOK, "s", 1, 1, Double.NaN, "", 0))
                .hasMessageContaining("W1: tolerance NaN");
        assertThatThrownBy(CheckFolderTest::errors).hasMessageContaining("A1: tolerance 1.0E-9, 0 errors");
        assertThatThrownBy(() -> new Reference(" ", Standing.READ)).hasMessageContaining("without text");
    }
}
