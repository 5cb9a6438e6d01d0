package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UncertaintyCommandTest {
    private static final String SHEET = "join: weld [s]\n50\n60\n70\n95\n80\n101\n65\n";

    @TempDir
    private Path folder;

    private Session session() {
        return new Session(folder)
                .write("times.csv", SHEET)
                .write("line.yaml", Session.LINE.replace("join strip: 60 s", "weld: {sheet: times.csv}"));
    }

    @Test
    void saysHowWellTheAnswerIsKnown_andWritesItsFiles() {
        Session.Done done = session().run("uncertainty", "line.yaml", "--resamples", "50");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out())
                .contains("The times rest on observations: 7 of times.csv.")
                // So few are not called enough.
                .contains("Too few observations: 7 of times.csv.")
                .doesNotContain("they are enough")
                .contains("times not known exactly")
                .containsPattern("\nchance to meet the target +[0-9.]+ % \\(as far as the times are known\\)\n")
                // The number stands once, with the digits that the wider interval leaves certain.
                .containsPattern("\nshare, times known +[0-9.]+ (to [0-9.]+ )?%, simulation noise alone\n")
                .contains("simulation noise alone");
        assertThat(folder.resolve("reports/line-uncertainty/report.html")).exists();
        assertThat(folder.resolve("reports/line-uncertainty/uncertainty.json")).exists();
        assertThat(folder.resolve("reports/line-uncertainty/resamples.csv")).exists();
        assertThat(folder.resolve("reports/line-uncertainty/share-against-capacity.csv"))
                .exists();
    }

    @Test
    void aTighterPrecisionTakesMoreObservations() throws IOException {
        int usual = more("1%");
        int tighter = more("0.5%");

        // Four times as many in all: 7 + m becomes 4 (7 + m).
        assertThat(7 + tighter).isBetween(4 * (7 + usual) - 4, 4 * (7 + usual) + 1);
    }

    private int more(String precision) throws IOException {
        Session.Done done = session()
                .run(
                        "uncertainty",
                        "line.yaml",
                        "--json",
                        "--no-report",
                        "--resamples",
                        "50",
                        "--precision",
                        precision);
        return new ObjectMapper()
                .readTree(done.out())
                .path("inputs")
                .get(0)
                .path("more_for_share")
                .asInt();
    }

    @Test
    void aLineWithoutMeasuredTimesIsRefused() {
        Session.Done done = session().write("line.yaml", Session.LINE).run("uncertainty", "line.yaml");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.err()).contains("no work element has times that were observed");
    }
}
