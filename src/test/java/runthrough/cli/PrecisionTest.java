package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How well an answer is to be known, and what is left out of it. */
class PrecisionTest {

    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenarios() {
        session = new Session(folder).write("quick.yaml", Session.LINE).write("marginal.yaml", Session.MARGINAL);
    }

    private JsonNode json(String... args) throws IOException {
        Session.Done done = session.run(args);
        assertThat(done.code()).as(done.err()).isZero();
        return new ObjectMapper().readTree(done.out());
    }

    /** Five of six run through: of n coil changes the half-width is about 1.96 x sqrt(0.139 / n), so 2 % takes about 1,300. */
    @Test
    void runsUntilTheShareIsKnownAsWellAsAskedFor() throws IOException {
        JsonNode verdict = json(
                "run", "marginal.yaml", "--no-report", "--json", "--half-width", "2%", "--max-replications", "400");

        assertThat(verdict.at("/precision/reached").asBoolean()).isTrue();
        double half = verdict.at("/share_run_through/interval_high").asDouble()
                - verdict.at("/share_run_through/interval_low").asDouble();
        assertThat(half / 2).isLessThanOrEqualTo(0.02);
        assertThat(verdict.at("/scenario/replications").asInt()).isBetween(40, 100);
        assertThat(session.run("run", "marginal.yaml", "--no-report", "--half-width", "2%", "--max-replications", "400")
                        .out()
                        .replace('\n', ' '))
                .contains("The share is known to plus or minus 2 %, as asked for.");
    }

    @Test
    void saysThatItWasNotReached_andHowManyWouldDo() throws IOException {
        String[] asked = {"run", "marginal.yaml", "--no-report", "--half-width", "0.5%", "--max-replications", "30"};

        String text = session.run(asked).out().replace('\n', ' ');
        assertThat(text)
                .contains(
                        " only, not to plus or minus 0.5 % as asked for: the 30 replications allowed are used up; about ");
        JsonNode verdict = json("run", "marginal.yaml", "--no-report", "--json", "--half-width", "0.5%");
        assertThat(verdict.at("/precision/reached").asBoolean()).isFalse();
        // Ten times the three replications of the scenario.
        assertThat(verdict.at("/precision/replications_allowed").asInt()).isEqualTo(30);
        // 1.96^2 x 0.139 / 0.005^2 = 21,000 coil changes in replications of 20.
        assertThat(verdict.at("/precision/replications_that_would_do").asInt()).isBetween(600, 2000);
    }

    @Test
    void withoutChanceOneReplicationReachesIt() throws IOException {
        JsonNode verdict = json("run", "quick.yaml", "--no-report", "--json", "--half-width", "0.1%");

        assertThat(verdict.at("/precision/reached").asBoolean()).isTrue();
        assertThat(verdict.at("/precision/half_width").isNull()).isTrue();
        assertThat(json("run", "quick.yaml", "--no-report", "--json")
                        .at("/precision")
                        .isNull())
                .isTrue();
    }

    @Test
    void theSameBytesForAnyNumberOfThreads() {
        String[] asked = {"run", "marginal.yaml", "--no-report", "--json", "--half-width", "3%", "--threads", "1"};
        String alone = session.run(asked).out();
        asked[asked.length - 1] = "3";

        assertThat(session.run(asked).out()).isEqualTo(alone);
    }

    @Test
    void coilChangesAtTheStartAreLeftOutOnRequest() throws IOException {
        JsonNode verdict = json("run", "marginal.yaml", "--no-report", "--json", "--leave-out", "5");

        assertThat(verdict.at("/scenario/left_out").asInt()).isEqualTo(5);
        assertThat(verdict.at("/coil_changes/total").asInt()).isEqualTo(3 * 16);
        assertThat(json("limits", "marginal.yaml", "--no-report", "--json", "--leave-out", "5")
                        .at("/present/coil_changes")
                        .asInt())
                .isEqualTo(3 * 16);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    run marginal.yaml --half-width 0%             | precision = 0 %; must be more than 0 % and less than 100 %
                    run marginal.yaml --half-width 100%           | precision = 100 %; must be more than 0 % and less than 100 %
                    run marginal.yaml --half-width 2              | --half-width = 2; the unit is missing
                    run marginal.yaml --half-width 1% --max-replications 0 | --max-replications = 0; must be a whole number from 1
                    run marginal.yaml --max-replications 40       | --max-replications = 40; has no effect without --half-width
                    run marginal.yaml --leave-out 21              | with the options given, run.leave-out = 21 coil changes; must be less
                    size marginal.yaml --leave-out -1             | --leave-out = -1; must be a whole number from 0
                    """)
    void whatCannotBeAskedIsRefusedBeforeAnythingIsRun(String command, String message) {
        Session.Done done = session.run(command.split(" "));

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.err()).startsWith(message).doesNotContain("Exception");
        assertThat(session.files()).containsExactly("marginal.yaml", "quick.yaml");
    }

    @ParameterizedTest
    @CsvSource({"size", "limits", "speeds"})
    void aScenarioThatAsksForAllIsRefusedByEveryStudy(String study) {
        session.write("all.yaml", Session.LINE.replace("95 %", "100 %"));

        Session.Done done = session.run(study, "all.yaml");

        assertThat(done.code()).isEqualTo(2);
        assertThat(done.err()).contains("target = 100 %; must be more than 0 % and less than 100 %");
        assertThat(folder.resolve("reports")).doesNotExist();
    }

    /** Wilson: z^2 t / (1 - t) = 3.8415 x 9999 = 38,411 coil changes must all run through. */
    @ParameterizedTest
    @CsvSource({"size", "limits", "speeds"})
    void aTargetBeyondWhatTheRunCanShowIsSaid_withHowManyWouldDo(String study) {
        String[] asked = {study, "marginal.yaml", "--no-report", "--target", "99.99%", "--replications", "2"};

        assertThat(session.run(asked).out().replace('\n', ' '))
                .contains("38 411")
                .contains("99.99 %");
    }

    @Test
    void aTargetBeyondWhatTheRunCanShowIsSaidByTheVerdictToo() {
        session.write(
                "hard.yaml", Session.LINE.replace("95 %", "99.99 %").replace("60 s}", "{uniform: [50 s, 90 s]}}"));

        assertThat(session.run("run", "hard.yaml", "--no-report").out().replace('\n', ' '))
                .contains("60 coil changes were run; it takes at least 38 500 to show a share of 99.99 %.");
    }
}
