package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogCommandTest {
    private static final String LOG = """
            time,event,coil
            0,tail stopped,=A1
            50,joint released,=A1
            900,tail stopped,A2
            955,joint released,A2
            960,line stopped,
            1000,line running,
            1800,tail stopped,A3
            """;

    @TempDir
    private Path folder;

    private Session session() {
        return new Session(folder).write("line.yaml", Session.LINE).write("log.csv", LOG);
    }

    @Test
    void saysWhetherTheModelFits_andWritesItsFiles() throws IOException {
        Session.Done done = session().run("log", "line.yaml", "log.csv");

        assertThat(done.code()).as(done.err()).isZero();
        assertThat(done.out())
                .containsPattern(
                        "THE (MODEL FITS YOUR LINE|LINE STOPS (MORE|LESS) OFTEN)\\. Of 2 coil changes in the log 50 %")
                .contains("What the line logged, and what the model gives")
                .contains("Report: ");
        Path report = folder.resolve("reports/line-log");
        assertThat(Files.readString(report.resolve("logged-coil-changes.csv")))
                .contains("'=A1,0,0,50,50,yes,0,0,,850".replace(",0,0,50,50", ",0,50,50"));
        assertThat(report.resolve("report.html")).exists();
        assertThat(report.resolve("log.json")).exists();
        assertThat(report.resolve("logged-against-simulated.csv")).exists();
    }

    @Test
    void jsonSaysHowTheFiguresCompare() throws IOException {
        Session.Done done = session().run("log", "line.yaml", "log.csv", "--json", "--no-report", "--logs", "150");

        var answer = new ObjectMapper().readTree(done.out());
        assertThat(answer.path("logged_coil_changes").asInt()).isEqualTo(2);
        assertThat(answer.path("logged_stops").asInt()).isEqualTo(1);
        assertThat(answer.path("figures").get(0).path("logged").asDouble()).isEqualTo(0.5);
    }

    @Test
    void aBadLogIsRefusedAndNothingIsWritten() {
        Session.Done done = session()
                .write("bad.csv", "time,event\n1,tail stopped\n0,tail stoped\n")
                .run("log", "line.yaml", "bad.csv");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.err())
                .contains("bad.csv:3:1 time = 0; is earlier than the row before.")
                .contains("bad.csv:3:3 event = tail stoped; is not a known event. Did you mean tail stopped?");
        assertThat(folder.resolve("reports")).doesNotExist();
    }

    @Test
    void theSameBytesWhateverTheNumberOfThreads() {
        String one = session()
                .run("log", "line.yaml", "log.csv", "--json", "--no-report", "--threads", "1")
                .out();
        String three = session()
                .run("log", "line.yaml", "log.csv", "--json", "--no-report", "--threads", "3")
                .out();

        assertThat(one).isEqualTo(three).isNotEmpty();
    }
}
