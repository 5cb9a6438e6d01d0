package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runthrough.cli.terminal.ExitCode;

/** {@code document}: all files of the document to hand over, or none. */
class DocumentCommandTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenario() {
        session = new Session(folder).write("quick.yaml", Session.LINE);
    }

    @Test
    void filesGoToAFolderOfTheirOwnAndAreNamed() throws IOException {
        Session.Done done = session.run("document", "quick.yaml", "--date", "3 March 2031");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(session.files())
                .containsExactlyInAnyOrder(
                        "quick.yaml",
                        "reports/quick-document/document.html",
                        "reports/quick-document/document.pdf",
                        "reports/quick-document/summary.png",
                        "reports/quick-document/summary.svg");
        assertThat(done.out()).contains("reports/quick-document/document.pdf");
        assertThat(done.err()).isEmpty();
        assertThat(Files.readString(folder.resolve("reports/quick-document/document.html")))
                .contains("3 March 2031");
    }

    @Test
    void lettersThatTheFontLacksAreNamed() {
        session.write(
                "quick.yaml",
                "title: \u7DDA \u0416 \u00E9 \uD83E\uDDF5 \u7DDA\n" + Session.LINE.replaceAll("(?m)^title:.*\n", ""));

        Session.Done done = session.run("document", "quick.yaml");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.err())
                .isEqualTo(
                        "warning: the font of the document has no shape for \u7DDA \uD83E\uDDF5; on paper # stands in their"
                                + " place. Write them in Latin, Greek or Cyrillic letters.\n");
    }

    /** Its inputs are those that were run; alternatives are those of the scenario as written. */
    @Test
    void anAlternativeMayBeTheLineOfTheDocument() throws IOException {
        session.write("quick.yaml", Session.LINE + """
                        alternatives:
                          larger: {accumulator: {strands: 10, stroke: 12 m}}
                          rethread: {practice: rethread, coil-change.rethread: 5 min}
                          faster: {"coil-change.join[1]": 50 s}
                        """);

        Session.Done done =
                session.run("document", "quick.yaml", "--alternative", "larger", "--set", "process.speed=50m/min");

        assertThat(done.code()).as(done.err()).isZero();
        String text = Files.readString(folder.resolve("reports/quick-document/document.html"))
                .replaceAll("<[^>]*>", " ")
                .replaceAll("[\\s\u00A0]+", " ");
        assertThat(text)
                .contains("accumulator.stroke 12 m set for this run", "process.speed 50 m/min set for this run")
                .contains("coil-change.join.join strip 60 s not stated")
                .doesNotContain("accumulator.capacity 100 m");
        // It is called by its name, and the line as written stands among the others.
        assertThat(text).contains("The line with \"larger\", in a year").contains("as written", "rethread", "faster");
        assertThat(Files.readString(folder.resolve("reports/quick-document/summary.svg")))
                .containsOnlyOnce(">larger<")
                .containsOnlyOnce(">as written<");
    }

    @Test
    void paperThatThereIsNotIsRefusedBeforeAnythingRuns() {
        Session.Done done = session.run("document", "quick.yaml", "--paper", "a5");

        assertThat(done.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(done.err()).contains("a5; must be one of a4, letter");
        assertThat(session.files()).containsExactly("quick.yaml");
    }
}
