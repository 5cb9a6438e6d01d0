package runthrough.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.cli.terminal.ProgramVersion;
import runthrough.web.PageServer;

/** A study on the page is that of the command of the same name: the same words and the same numbers. */
class StudiesOnThePageTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String LINE = "tube-line-measured.yaml";
    private static final String TIMES = "tube-line-times.csv";
    private static final String LOG = "tube-line-log.csv";

    private static PageServer page;

    @TempDir
    Path folder;

    @BeforeAll
    static void serve() throws IOException {
        page = PageServer.start(ProgramVersion.text(), 2, 0);
    }

    @AfterAll
    static void end() {
        page.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"size", "speeds", "limits", "sensitivity", "compare", "uncertainty", "log", "times"})
    void thePageAndTheCommandGiveOneAnswer(String study) throws Exception {
        JsonNode command = JSON.readTree(new Session(folder)
                .write(LINE, shipped(LINE))
                .write(TIMES, shipped(TIMES))
                .write(LOG, shipped(LOG))
                .run(arguments(study).toArray(String[]::new))
                .out());

        JsonNode shown = onThePage(study);

        assertThat(shown.get("headline").asText())
                .startsWith(command.get("verdict").asText())
                .endsWithIgnoringCase(command.get("headline").asText());
        assertThat(shown.get("words")).containsAll(command.get("advice"));
        assertThat(shown.get("tables")).isNotEmpty();
    }

    /** To the byte. */
    @Test
    void theDocumentOfThePageIsThatOfTheCommand() throws Exception {
        new Session(folder)
                .write(LINE, shipped(LINE))
                .write(TIMES, shipped(TIMES))
                .run("document", LINE, "--out", "out");

        byte[] shown =
                Base64.getDecoder().decode(onThePage("document").get("pdf").asText());

        assertThat(shown).isEqualTo(Files.readAllBytes(folder.resolve("out/document.pdf")));
    }

    private static List<String> arguments(String study) {
        List<String> files = switch (study) {
            case "times" -> List.of(TIMES);
            case "log" -> List.of(LINE, LOG);
            default -> List.of(LINE);
        };
        return Stream.of(
                        List.of(study),
                        files,
                        List.of("--json"),
                        study.equals("times") ? List.<String>of() : List.of("--no-report"))
                .flatMap(List::stream)
                .toList();
    }

    private static JsonNode onThePage(String study) throws IOException, InterruptedException {
        ObjectNode body = JSON.createObjectNode().put("text", shipped(LINE)).put("units", "metric");
        String file = study.equals("times") ? TIMES : LOG;
        body.putObject("file").put("name", file).put("text", shipped(file));
        JsonNode begun = ask("job/" + study, body);
        while (true) {
            JsonNode state = ask("job", begun);
            assertThat(state.get("failed").isNull()).as(state.toString()).isTrue();
            if (!state.get("result").isNull()) {
                return state.get("result");
            }
            Thread.sleep(50);
        }
    }

    private static JsonNode ask(String path, JsonNode body) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(page.address().resolve("/api/" + path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofByteArray(JSON.writeValueAsBytes(body)))
                .build();
        return JSON.readTree(HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.ofByteArray())
                .body());
    }

    private static String shipped(String name) throws IOException {
        return Files.readString(Path.of("scenarios", name));
    }
}
