package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import runthrough.plant.SimulationRequest;
import runthrough.scenario.ScenarioFile;
import runthrough.scenario.ScenarioReading;
import runthrough.simulation.LineSimulator;
import runthrough.simulation.records.Detail;

/** The course that the picture is moved by, and what the line is worth, as they are served. */
class ServedCourseTest extends ServedPage {

    /** Of all coil changes of all replications none loses more time than the one that is shown. */
    @Test
    void theCourseIsThatOfTheWorstCoilChangeOfTheRun() throws IOException, InterruptedException {
        SimulationRequest request = ((ScenarioReading.Accepted)
                        ScenarioFile.open(Path.of("scenarios", "tube-line.yaml"))
                                .read())
                .request();
        LineSimulator simulator = LineSimulator.of(request.line(), request.run());

        JsonNode course = ask("/api/course", body(shipped("tube-line")));

        int replication = course.get("replication").asInt();
        int number = course.get("worst").asInt();
        double most = IntStream.range(0, request.run().replications())
                .boxed()
                .flatMap(i -> simulator.run(i, Detail.CHANGES).changes().stream())
                .mapToDouble(change -> change.lostTime())
                .max()
                .orElseThrow();
        assertThat(simulator
                        .run(replication, Detail.CHANGES)
                        .changes()
                        .get(number - 1)
                        .lostTime())
                .isEqualTo(most);
        assertThat(course.get("searched").asLong()).isEqualTo(10_000);
        assertThat(course.get("changes").findValuesAsText("number")).contains(String.valueOf(number));
    }

    /** A line that is changed shows the same coil change: the same joint, made in the same time. */
    @Test
    void aChangedLineShowsTheSameJoint() throws IOException, InterruptedException {
        JsonNode worst = ask("/api/course", body(shipped("tube-line")));
        int number = worst.get("worst").asInt();

        JsonNode slower = ask(
                "/api/course",
                body(shipped("tube-line").replace("speed: 45 m/min", "speed: 40 m/min"))
                        .put("replication", worst.get("replication").asInt())
                        .put("change", number));

        assertThat(standing(slower, number)).isCloseTo(standing(worst, number), within(1e-6));
    }

    private static double standing(JsonNode course, int number) {
        for (JsonNode change : course.get("changes")) {
            if (change.get("number").asInt() == number) {
                return change.get("released").asDouble() - change.get("stopped").asDouble();
            }
        }
        throw new AssertionError("no coil change " + number);
    }

    /** Figures, sentence and tables are the document's, and so say the same. */
    @Test
    void whatAlternativesAreWorthIsWhatTheDocumentSays() throws IOException, InterruptedException {
        JsonNode worth = result(
                ask("/api/job/worth", body(shipped("tube-line"))).get("id").asText());

        String best = worth.get("best").asText().replace('\u00a0', ' ');
        assertThat(worth.get("figures")).hasSize(4);
        for (JsonNode figure : worth.get("figures")) {
            assertThat(best)
                    .contains(figure.get(1).asText().replace('\u00a0', ' ').replaceFirst(" (EUR|years|\\().*", ""));
        }
        assertThat(worth.get("tables").findValuesAsText("caption"))
                .anyMatch(caption -> caption.startsWith("In EUR"))
                .anyMatch(caption -> caption.startsWith("Side by side"));
        assertThat(result(ask("/api/job/worth", body(shipped("slitter")))
                                .get("id")
                                .asText())
                        .get("figures"))
                .isEmpty();
    }

    private static JsonNode result(String id) throws IOException, InterruptedException {
        while (true) {
            JsonNode state = ask("/api/job", JSON.createObjectNode().put("id", id));
            assertThat(state.get("failed").isNull()).as(state.toString()).isTrue();
            if (!state.get("result").isNull()) {
                return state.get("result");
            }
            Thread.sleep(100);
        }
    }
}
