package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ValidationCommandTest {
    private static final String RECORD = """
            {"kind":"number","topic":"WORK","id":"W1","what":"weld","source":{"text":"A book","standing":"READ"},\
            "unit":"s","expected":95.0,"got":95.0,"tolerance":1e-9,"rule":"digits printed","standardError":0.0}
            """;

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void open() {
        session = new Session(folder);
    }

    @Test
    void makesThePageOfWhatTheTestsRecordedAndPrintsTheSame() {
        session.write("target/checks/SomeTest.jsonl", RECORD);
        Session.Done done = session.run("validation");

        assertThat(done.code()).isZero();
        assertThat(done.err()).isEmpty();
        assertThat(done.out())
                .contains("W1    weld", "expected 95 s, got 95 s", "All 1 checks agree")
                .endsWith("\nPage: reports/validation.html" + System.lineSeparator());
        assertThat(folder.resolve("reports/validation.html")).content().contains("All 1 checks agree");
        assertThat(session.files()).containsExactly("reports/validation.html", "target/checks/SomeTest.jsonl");
    }

    @Test
    void replacesAnEarlierPage() {
        session.write("r/SomeTest.jsonl", RECORD).write("page.html", "old");
        assertThat(session.run("validation", "--from", "r", "--out", "page.html")
                        .code())
                .isZero();

        assertThat(folder.resolve("page.html")).content().startsWith("<!DOCTYPE html>");
    }

    @Test
    void aCheckThatDoesNotAgree_isShownAndMakesTheCommandFail() {
        session.write("target/checks/SomeTest.jsonl", RECORD.replace("\"got\":95.0", "\"got\":96.0"));
        Session.Done done = session.run("validation");

        assertThat(done.code()).isEqualTo(4);
        assertThat(done.out()).contains("DOES NOT AGREE");
        assertThat(folder.resolve("reports/validation.html")).content().contains("<td>NO</td>");
    }

    @Test
    void withoutRecords_saysHowToGetThemAndWritesNothing() {
        Session.Done done = session.run("validation", "--from", "nowhere");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.out()).isEmpty();
        assertThat(done.errLines())
                .containsExactly(
                        folder.resolve("nowhere")
                                + " does not exist. The tests write it: run mvn verify in the sources first, or name another folder.");
        assertThat(session.files()).isEmpty();
    }

    @Test
    void aFolderInThePlaceOfThePage_isLeftAlone() throws Exception {
        session.write("target/checks/SomeTest.jsonl", RECORD);
        Files.createDirectory(folder.resolve("page"));
        Session.Done done = session.run("validation", "--out", "page");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.errLines())
                .containsExactly(
                        "page cannot be written: it is a folder, and must be a file. Name another file with --out.");
        assertThat(folder.resolve("page")).isEmptyDirectory();
    }
}
