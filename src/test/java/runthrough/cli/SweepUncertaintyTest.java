package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static runthrough.cli.SweepCommandTest.json;
import static runthrough.cli.SweepCommandTest.lines;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.cli.terminal.ExitCode;

/** {@code sweep --uncertainty}: a line for each case, with what its observed times leave open. */
class SweepUncertaintyTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void writeScenario() {
        session = new Session(folder).write("measured.yaml", Session.MEASURED);
    }

    /** A capacity of 100 m with six times that were observed, at two speeds of the process and three capacities. */
    private Session.Done uncertain(String... more) {
        return session.run(Stream.concat(
                        Stream.of(
                                "sweep",
                                "measured.yaml",
                                "--vary",
                                "process.speed=58m/min,62m/min",
                                "--vary",
                                "usable-capacity=70m..90m:3",
                                "--uncertainty",
                                "50"),
                        Arrays.stream(more))
                .toArray(String[]::new));
    }

    @Test
    void aCaseGivesTheNumbersOfTheCommandUncertaintyBesideItsOwn() {
        Session.Done done = uncertain("--set", "run.target=90%");
        JsonNode line = lines(done).get(4);
        String[] values = {
            "measured.yaml",
            "--set",
            "process.speed=62m/min",
            "--set",
            "usable-capacity=80m",
            "--set",
            "run.target=90%",
            "--json",
            "--no-report"
        };
        JsonNode alone =
                json(session.run(Stream.concat(Stream.of("uncertainty", "--resamples", "50"), Arrays.stream(values))
                                .toArray(String[]::new))
                        .out());
        JsonNode run = json(session.run(
                        Stream.concat(Stream.of("run"), Arrays.stream(values)).toArray(String[]::new))
                .out());

        assertThat(done.code()).as(done.out() + done.err()).isZero();
        assertThat(line.path("answer")).isEqualTo(run.path("answer"));
        assertThat(line.path("share_run_through")).isEqualTo(run.at("/share_run_through/mean"));
        assertThat(line.path("answer_with_times")).isEqualTo(alone.path("answer"));
        assertThat(line.path("chance_target_met").asDouble())
                .isEqualTo(alone.path("chance_target_met").asDouble())
                .isStrictlyBetween(0.0, 1.0);
        assertThat(line.path("share_as_observed")).isEqualTo(alone.at("/share_run_through/value"));
        assertThat(line.path("share_with_times_low")).isEqualTo(alone.at("/share_run_through/with_times/low"));
        assertThat(line.path("share_with_times_high")).isEqualTo(alone.at("/share_run_through/with_times/high"));
        assertThat(line.path("share_simulation_alone_low"))
                .isEqualTo(alone.at("/share_run_through/simulation_alone/low"));
        assertThat(line.path("share_simulation_alone_high"))
                .isEqualTo(alone.at("/share_run_through/simulation_alone/high"));
        assertThat(line.path("share_half_width_of_times"))
                .isEqualTo(alone.at("/share_run_through/half_width_of_times"));
        assertThat(line.path("capacity_for_target_m")).isEqualTo(alone.at("/capacity_m/value"));
        assertThat(line.path("capacity_with_times_low_m")).isEqualTo(alone.at("/capacity_m/with_times/low"));
        assertThat(line.path("capacity_with_times_high_m")).isEqualTo(alone.at("/capacity_m/with_times/high"));
        assertThat(line.path("capacity_half_width_of_times_m")).isEqualTo(alone.at("/capacity_m/half_width_of_times"));
        assertThat(line.path("resamples").asInt()).isEqualTo(50);
    }

    @Test
    void theLinesAreWhatTheSchemaSays_andSayWhereNothingWasObserved() {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                .getSchema(session.run("schema", "sweep").out());
        session.write("cases.jsonl", """
                {"coil-change.join.join strip": "60 s"}
                {}
                {"run.target": "100 %"}
                """);
        Session.Done done = uncertain();
        Session.Done failing = session.run("sweep", "measured.yaml", "--cases", "cases.jsonl", "--uncertainty", "50");

        assertThat(lines(done)).hasSize(6);
        assertThat(failing.code()).isEqualTo(ExitCode.CASE_FAILED);
        assertThat(Stream.concat(lines(done).stream(), lines(failing).stream()))
                .allSatisfy(line -> assertThat(schema.validate(line)).isEmpty())
                .allSatisfy(line -> assertThat(line.has("chance_target_met")).isTrue());
        assertThat(lines(failing))
                .extracting(line -> line.path("error").asText())
                .satisfiesExactly(
                        error -> assertThat(error).startsWith("no work element has times that were observed"),
                        error -> assertThat(error).isEqualTo("null"),
                        error -> assertThat(error)
                                .startsWith("target = 100 %; must be more than 0 % and less than 100 %"));
        assertThat(lines(session.run(Session.NINE))).noneMatch(line -> line.has("chance_target_met"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"json", "csv"})
    void threadsAndShardsGiveTheBytesOfOneMachine(String format) throws IOException {
        uncertain("--format", format, "--threads", "1", "--out", "whole");
        for (String part : List.of("1", "2", "3")) {
            uncertain("--format", format, "--threads", part, "--shard", part + "/3", "--out", "part-" + part);
        }
        session.write("part-2", read("part-2").substring(0, read("part-2").length() - 40));
        assertThat(uncertain("--format", format, "--shard", "2/3", "--out", "part-2")
                        .err())
                .contains("going on behind 1 cases that were done before");
        session.run("merge", "part-2", "part-3", "part-1", "--out", "merged");

        assertThat(read("merged")).isEqualTo(read("whole"));
        assertThat(read("whole").lines()).hasSize(format.equals("csv") ? 7 : 6);
    }

    private String read(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }
}
