package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where {@code run} writes its report: whole or not at all. */
class RunReportTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenario() {
        session = new Session(folder).write("lines/quick.yaml", Session.LINE);
    }

    private List<String> filesBesideTheScenario() {
        List<String> files = new ArrayList<>(session.files());
        assertThat(files.remove("lines/quick.yaml")).isTrue();
        return files;
    }

    private Session.Done refused(String... args) {
        Session.Done done = session.run(args);
        assertThat(done.code()).isEqualTo(2);
        assertThat(done.out()).isEmpty();
        assertThat(done.errLines()).hasSize(1);
        assertThat(done.err()).doesNotContain("Exception", "\tat ");
        return done;
    }

    @Test
    void byDefaultItGoesToReportsAndTheScenariosName() {
        Session.Done done = session.run("run", "lines/quick.yaml");

        assertThat(done.code()).isZero();
        assertThat(filesBesideTheScenario()).containsExactlyElementsOf(ReportFiles.in("reports/quick"));
        assertThat(done.out()).endsWith("\nReport: " + Path.of("reports", "quick", "report.html") + "\n");
    }

    @Test
    void orWhereSaid_foldersAndAll() {
        session.run("run", "lines/quick.yaml", "--out", "a/b");

        assertThat(filesBesideTheScenario()).containsExactlyElementsOf(ReportFiles.in("a/b"));
    }

    @Test
    void dateIsPrintedAsGiven_andNoneOtherwise() throws IOException {
        session.run("run", "lines/quick.yaml", "--out", "dated", "--date", "Monday at noon");
        session.run("run", "lines/quick.yaml", "--out", "plain");

        assertThat(Files.readString(folder.resolve("dated/report.html"))).contains("Monday at noon");
        assertThat(Files.readString(folder.resolve("plain/report.html"))).doesNotContain("Monday at noon");
    }

    @Test
    void otherFilesInTheFolderAreLeftAlone() {
        session.write("mine/notes.txt", "keep me");

        session.run("run", "lines/quick.yaml", "--out", "mine");
        session.run("run", "lines/quick.yaml", "--out", "mine");

        assertThat(folder.resolve("mine/notes.txt")).hasContent("keep me");
        assertThat(filesBesideTheScenario()).containsAll(ReportFiles.in("mine")).hasSize(ReportFiles.ALL.size() + 1);
    }

    @Test
    void aFileWhereTheFolderShouldBe() {
        session.write("taken", "I am a file");

        assertThat(refused("run", "lines/quick.yaml", "--out", "taken").err())
                .contains("taken cannot take the report; it is a file, and must be a folder.");
        assertThat(filesBesideTheScenario()).containsExactly("taken");
    }

    /** A folder within a file cannot be made by anybody, while to forbid a folder does not stop a user with all rights. */
    @Test
    void aFolderThatCannotBeMade() {
        session.write("taken", "I am a file");

        assertThat(refused("run", "lines/quick.yaml", "--out", "taken/report").err())
                .contains("cannot take the report", "Nothing was written there.");
        assertThat(filesBesideTheScenario()).containsExactly("taken");
    }

    @Test
    void aRunThatFailsLeavesNothing() {
        session.write(
                "lines/quick.yaml",
                Session.LINE.replace(
                        "length: 1000 m", "length: {uniform: [1 m, 1000 m]}, head-crop: 5 m, tail-crop: 5 m"));

        Session.Done done = session.run("run", "lines/quick.yaml", "--coil-changes", "500");

        assertThat(done.code()).isEqualTo(2);
        assertThat(filesBesideTheScenario()).isEmpty();
        assertThat(folder.resolve("reports")).doesNotExist();
    }

    @Test
    void anywhereAndNowhereAtOnceIsBadInput() {
        Session.Done done = session.run("run", "lines/quick.yaml", "--out", "a", "--no-report");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.err()).contains("--out", "--no-report", "mutually exclusive");
        assertThat(filesBesideTheScenario()).isEmpty();
    }
}
