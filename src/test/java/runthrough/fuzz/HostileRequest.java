package runthrough.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import runthrough.web.PageServer;

/**
 * Sends what the fuzzer makes to the page, its first letter naming the route. It is answered, or refused with a reason.
 *
 * @param page that is asked
 * @param client that asks
 */
record HostileRequest(PageServer page, HttpClient client) implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> ROUTES = List.of(
            "/api/line",
            "/api/edit",
            "/api/sliders",
            "/api/course",
            "/api/answer",
            "/api/job",
            "/api/job/stop",
            "/api/job/map",
            "/api/job/fixes",
            "/api/job/curve",
            "/api/report",
            "/api/tables");

    static HostileRequest open() throws IOException {
        return new HostileRequest(PageServer.start("runthrough test", 1, 0), HttpClient.newHttpClient());
    }

    void send(byte[] input) throws IOException, InterruptedException {
        if (input.length == 0) {
            return;
        }
        String route = ROUTES.get(Math.floorMod(input[0] - 'A', ROUTES.size()));
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(page.address().resolve(route))
                        .timeout(Duration.ofSeconds(20))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofByteArray(Arrays.copyOfRange(input, 1, input.length)))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isIn(200, 400, 404, 413, 422, 429, 503);
        if (answer.statusCode() == 200 && !route.startsWith("/api/job")) {
            return;
        }
        var said = JSON.readTree(answer.body());
        if (answer.statusCode() != 200) {
            assertThat(said.path("message").asText()).isNotBlank().doesNotContain("Exception", "java.", "runthrough.");
        } else if (said.path("id").isTextual()) {
            stop(said.path("id").asText());
        }
    }

    private void stop(String job) throws IOException, InterruptedException {
        client.send(
                HttpRequest.newBuilder(page.address().resolve("/api/job/stop"))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(
                                JSON.createObjectNode().put("id", job).toString()))
                        .build(),
                HttpResponse.BodyHandlers.discarding());
    }

    @Override
    public void close() {
        page.close();
    }
}
