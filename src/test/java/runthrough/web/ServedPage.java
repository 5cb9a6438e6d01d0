package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** Serves the page while the tests of a class run, and asks it. */
abstract class ServedPage {

    static final ObjectMapper JSON = new ObjectMapper();
    static final HttpClient CLIENT = HttpClient.newHttpClient();
    static PageServer page;

    @BeforeAll
    static void serve() throws IOException {
        page = PageServer.start("runthrough test", 2, 0);
    }

    @AfterAll
    static void end() {
        page.close();
    }

    static HttpResponse<byte[]> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    static HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(page.address().resolve(path)).timeout(Duration.ofSeconds(60));
    }

    static HttpResponse<byte[]> post(String path, Object body) throws IOException, InterruptedException {
        return send(to(path).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofByteArray(JSON.writeValueAsBytes(body))));
    }

    static JsonNode ask(String path, Object body) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = post(path, body);
        assertThat(answer.statusCode())
                .as(new String(answer.body(), StandardCharsets.UTF_8))
                .isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    static ObjectNode body(String text) {
        return JSON.createObjectNode().put("text", text).put("units", "metric");
    }

    static String shipped(String name) throws IOException {
        return Files.readString(Path.of("scenarios", name + ".yaml"));
    }
}
