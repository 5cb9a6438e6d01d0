package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the page's server answers, and to whom. */
class PageServerTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static PageServer page;

    @BeforeAll
    static void serve() throws IOException {
        page = PageServer.start("runthrough test", 2, 0);
    }

    @AfterAll
    static void end() {
        page.close();
    }

    private static HttpResponse<byte[]> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(page.address().resolve(path)).timeout(Duration.ofSeconds(60));
    }

    private static HttpResponse<byte[]> post(String path, Object body) throws IOException, InterruptedException {
        return send(to(path).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofByteArray(JSON.writeValueAsBytes(body))));
    }

    private static JsonNode ask(String path, Object body) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = post(path, body);
        assertThat(answer.statusCode())
                .as(new String(answer.body(), StandardCharsets.UTF_8))
                .isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    private static ObjectNode body(String text) {
        return JSON.createObjectNode().put("text", text).put("units", "metric");
    }

    private static String shipped(String name) throws IOException {
        return Files.readString(Path.of("scenarios", name + ".yaml"));
    }

    static Stream<String> names() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.replace(".yaml", ""))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @Test
    void everyShippedLineIsOffered() throws IOException, InterruptedException {
        JsonNode lines = JSON.readTree(send(to("/api/lines")).body());

        assertThat(lines)
                .extracting(line -> line.get("name").asText())
                .containsExactlyInAnyOrderElementsOf(names().toList());
        assertThat(lines.get(0).get("name").asText()).isEqualTo("tube-line");
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyShippedLineIsReadAnsweredAndFollowed(String name) throws IOException, InterruptedException {
        String text = shipped(name);

        JsonNode line = ask("/api/line", body(text));
        JsonNode answer = ask("/api/answer", body(text).put("effort", 0));
        JsonNode course = ask("/api/course", body(text));

        assertThat(line.get("problems")).isEmpty();
        assertThat(line.get("fields")).isNotEmpty();
        assertThat(answer.get("word").asText()).isNotEmpty();
        assertThat(answer.get("figures")).isNotEmpty();
        assertThat(course.get("t").size()).isEqualTo(course.get("x").size()).isGreaterThan(10);
        assertThat(course.get("changes")).isNotEmpty();
    }

    /** Each field set to what it shows is the same line: showing loses nothing. */
    @ParameterizedTest
    @ValueSource(strings = {"metric", "us"})
    void unitsAreSwitchedWithoutLosingAnything(String units) throws IOException, InterruptedException {
        String text = shipped("tube-line");

        JsonNode line = ask("/api/line", body(text).put("units", units));
        JsonNode speed = field(line, "rated-speed");

        assertThat(speed.get("shown").asText()).isEqualTo(units.equals("us") ? "147.6 ft/min" : "45 m/min");
        assertThat(speed.get("si").asDouble()).isEqualTo(0.75);
        assertThat(field(line, "entry.top-speed").get("written").asText()).isEqualTo("90 m/min");
    }

    private static JsonNode field(JsonNode line, String path) {
        for (JsonNode field : line.get("fields")) {
            if (field.get("path").asText().equals(path)) {
                return field;
            }
        }
        throw new AssertionError("no field " + path);
    }

    private static ObjectNode edit(String text, String path, @Nullable String value) {
        ObjectNode body = body(text);
        ObjectNode change = body.putArray("changes").addObject().put("path", path);
        if (value != null) {
            change.put("value", value);
        }
        return body;
    }

    @Test
    void aChangeIsWrittenIntoTheFileAndComments_stay() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        String now = ask("/api/edit", edit(text, "accumulator.stroke", "16 m"))
                .get("text")
                .asText();

        assertThat(now).isEqualTo(text.replace("stroke: 9 m", "stroke: 16 m"));
    }

    /** 8 strands hold 160 m with a stroke of 20 m. */
    @Test
    void aCapacityIsWrittenAsWhatGivesIt() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        String now = ask("/api/edit", edit(text, "usable-capacity", "160 m"))
                .get("text")
                .asText();

        assertThat(now).isEqualTo(text.replace("stroke: 9 m", "stroke: 20 m"));
    }

    @Test
    void aJointCycleTimeIsWrittenIntoEveryElementOfTheStandingWork() throws IOException, InterruptedException {
        String text = shipped("tube-line");
        double before = field(ask("/api/line", body(text)), "joint-cycle-time")
                .get("si")
                .asDouble();

        JsonNode edited = ask("/api/edit", edit(text, "joint-cycle-time", before / 2 + " s"));

        assertThat(field(edited.get("line"), "joint-cycle-time").get("si").asDouble())
                .isCloseTo(before / 2, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(edited.get("text").asText())
                .contains("shear tail: 4 s", "travel: 1200 mm/min", "triangular: [60 s, 90 s, 240 s]");
    }

    @Test
    void elementsOfWorkAreAddedAndRemoved() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        String more = ask("/api/edit", edit(text, "coil-change.join[+]", "{grind: 15 s}"))
                .get("text")
                .asText();
        String fewer = ask("/api/edit", edit(more, "coil-change.join[3]", null))
                .get("text")
                .asText();

        assertThat(more).contains("- inspect: 10 s\n    - {grind: 15 s}\n");
        assertThat(fewer).contains("- {grind: 15 s}").doesNotContain("inspect");
    }

    @Test
    void whatIsWrongIsSaidWithItsPathInTheWordsOfTheCommandLine() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        JsonNode problems =
                ask("/api/edit", edit(text, "accumulator.stroke", "-9 m")).at("/line/problems");

        assertThat(problems.get(0).get("path").asText()).isEqualTo("accumulator.stroke");
        assertThat(problems.get(0).get("message").asText()).contains("-9 m", "must be more than 0 m");
    }

    @Test
    void aScenarioNamesNoFilesOfTheMachine() throws IOException, InterruptedException {
        String text = shipped("slitter").replaceAll("schedule: \\S+", "schedule: /etc/passwd");

        JsonNode problems = ask("/api/line", body(text)).get("problems");

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).get("message").asText())
                .contains("only files of the lines that come with the program");
    }

    /** A figure is worked out of the line, for which its files would be read. */
    @Test
    void anEditReadsNoFilesOfTheMachine() throws IOException, InterruptedException {
        String text = shipped("slitter");
        String foreign = text.replaceAll("schedule: \\S+", "schedule: /etc/passwd");

        JsonNode given = ask("/api/edit", edit(foreign, "joint-cycle-time", "40 s"));
        JsonNode set = ask("/api/edit", edit(text, "coils.schedule", "/etc/passwd"));

        for (JsonNode answer : List.of(given, set)) {
            JsonNode problems = answer.get("line").get("problems");
            assertThat(problems).hasSize(1);
            assertThat(problems.get(0).get("message").asText())
                    .contains("only files of the lines that come with the program");
        }
        assertThat(set.get("text").asText()).isEqualTo(text);
    }

    @Test
    void theSameTextGivesTheSameAnswer() throws IOException, InterruptedException {
        ObjectNode body = body(shipped("stamping-joiner")).put("effort", 1);

        assertThat(post("/api/answer", body).body())
                .isEqualTo(post("/api/answer", body).body());
    }

    @Test
    void moreEffortNarrowsTheInterval() throws IOException, InterruptedException {
        ObjectNode body = body(shipped("stamping-joiner"));

        JsonNode quick = ask("/api/answer", body.deepCopy().put("effort", 0)).get("share");
        JsonNode sure = ask("/api/answer", body.deepCopy().put("effort", 3)).get("share");

        assertThat(sure.get("high").asDouble() - sure.get("low").asDouble())
                .isLessThan((quick.get("high").asDouble() - quick.get("low").asDouble()) / 2);
    }

    @Test
    void whatWouldFixALineFixesIt() throws IOException, InterruptedException {
        String text = shipped("tube-line");

        JsonNode fixes = done("fixes", body(text)).get("fixes");

        assertThat(fixes.size()).isGreaterThanOrEqualTo(2);
        for (JsonNode fix : fixes) {
            if (fix.get("changes").isEmpty()) {
                // A shorter element is for people to bring about; the page has no field for it.
                continue;
            }
            ObjectNode edit = body(text);
            edit.set("changes", fix.get("changes"));
            String fixed = ask("/api/edit", edit).get("text").asText();
            assertThat(ask("/api/answer", body(fixed).put("effort", 2))
                            .get("style")
                            .asText())
                    .as(fix.get("words").asText())
                    .isIn("runs-through", "marginal");
        }
    }

    private static JsonNode done(String kind, ObjectNode body) throws IOException, InterruptedException {
        String id = ask("/api/job/" + kind, body).get("id").asText();
        while (true) {
            JsonNode state = ask("/api/job", JSON.createObjectNode().put("id", id));
            assertThat(state.get("failed").isNull()).as(state.toString()).isTrue();
            if (!state.get("result").isNull()) {
                return state.get("result");
            }
            Thread.sleep(100);
        }
    }

    @Test
    void theCurveOfCapacitiesReachesTheTarget() throws IOException, InterruptedException {
        JsonNode curve = done("curve", body(shipped("tube-line")));

        assertThat(curve.get("points").size()).isGreaterThan(5);
        assertThat(curve.get("words").asText()).contains("The target takes");
    }

    @Test
    void aMapIsDrawnOverTwoNumbersOfTheLine() throws IOException, InterruptedException {
        JsonNode map =
                done("map", body(shipped("tube-line")).put("x", "rated-speed").put("y", "usable-capacity"));

        assertThat(map.get("svg").asText()).contains("<svg").doesNotContain("<script");
        assertThat(map.get("words").asText()).contains("The target of 99.5 %");
    }

    @Test
    void aMapOverWhatIsNotThereIsRefused() throws IOException, InterruptedException {
        String id = ask(
                        "/api/job/map",
                        body(shipped("tube-line")).put("x", "rated-speed").put("y", "no.such"))
                .get("id")
                .asText();
        JsonNode state;
        do {
            state = ask("/api/job", JSON.createObjectNode().put("id", id));
        } while (state.get("failed").isNull());

        assertThat(state.get("failed").asText()).contains("no.such");
    }

    @Test
    void reportAndTablesCanBeTakenAway() throws IOException, InterruptedException {
        HttpResponse<byte[]> report = post("/api/report", body(shipped("tube-line")));
        HttpResponse<byte[]> tables = post("/api/tables", body(shipped("tube-line")));

        assertThat(new String(report.body(), StandardCharsets.UTF_8))
                .startsWith("<!")
                .contains("Kestrel Road");
        assertThat(tables.headers().firstValue("Content-Type")).contains("application/zip");
        assertThat(new String(tables.body(), StandardCharsets.ISO_8859_1))
                .startsWith("PK")
                .contains("scenario.yaml", "verdict.json");
    }

    // ---- whom it answers
    // -----------------------------------------------------------------------------------------------

    @Test
    void itListensOnTheLoopbackAddressOnly() throws IOException {
        assertThat(page.address().getHost()).isEqualTo("127.0.0.1");
        InetAddress other = InetAddress.getByAddress(new byte[] {127, 0, 0, 2});
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> new Socket(other, page.address().getPort()).close())
                .isInstanceOf(IOException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"example.test", "127.0.0.1.example.test", "127.0.0.1:1"})
    void aRequestThatNamesAnotherHostIsRefused(String host) throws IOException {
        assertThat(raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403");
    }

    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket(
                InetAddress.getByAddress(new byte[] {127, 0, 0, 1}),
                page.address().getPort())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void aRequestFromAnotherPageIsRefused() throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to("/api/lines").header("Origin", "http://example.test"));

        assertThat(answer.statusCode()).isEqualTo(403);
    }

    @Test
    void aRequestThatAFormCouldSendIsRefused() throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to("/api/line")
                .header("Content-Type", "text/plain")
                .POST(HttpRequest.BodyPublishers.ofString("{\"text\": \"\"}")));

        assertThat(answer.statusCode()).isEqualTo(415);
    }

    @Test
    void aRequestThatIsTooLargeIsRefused() throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = post("/api/line", body("x".repeat(2_000_000)));

        assertThat(answer.statusCode()).isEqualTo(413);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "{", "[]", "{\"text\": 1, \"other\": 2}", "{\"units\": \"us\"}", "{\"text\": {\"a\": 1}}"})
    void aRequestThatIsNoneIsRefusedWithoutATrace(String body) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to("/api/line")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8))
                .contains("message")
                .doesNotContain("at runthrough");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/main.js", "/page.css", "/uplot/uPlot.esm.js", "/api/lines", "/nothing"})
    void everyAnswerForbidsWhatThePageDoesNotNeed(String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to(path));

        String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
        assertThat(policy)
                .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    }

    @Test
    void thePageHasNoScriptOrStyleWithinIt() throws IOException, InterruptedException {
        String html = new String(send(to("/")).body(), StandardCharsets.UTF_8);

        assertThat(html).doesNotContain("<style", "style=", "onclick", "http://", "https://");
        assertThat(html.replaceAll("<script type=\"module\" src=\"/main.js\"></script>", ""))
                .doesNotContain("<script");
    }

    @Test
    void aPortThatIsTakenIsReplacedByAFreeOne() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByAddress(new byte[] {127, 0, 0, 1}));
                PageServer other = PageServer.start("runthrough test", 1, taken.getLocalPort())) {
            assertThat(other.address().getPort()).isNotEqualTo(taken.getLocalPort());
        }
    }

    @Test
    void aJobThatNobodyAsksAfterIsGivenUp() throws InterruptedException {
        try (Jobs jobs = new Jobs()) {
            java.util.concurrent.CountDownLatch ended = new java.util.concurrent.CountDownLatch(1);
            jobs.begin(listener -> {
                while (!listener.cancelled()) {
                    Thread.onSpinWait();
                }
                ended.countDown();
                return "given up";
            });

            assertThat(ended.await(20, java.util.concurrent.TimeUnit.SECONDS)).isTrue();
            assertThat(jobs.count()).isZero();
        }
    }

    @Test
    void onlySoManyJobsRunAtOnce() {
        try (Jobs jobs = new Jobs()) {
            List<String> begun = Stream.generate(() -> jobs.begin(listener -> {
                        while (!listener.cancelled()) {
                            Thread.onSpinWait();
                        }
                        return "";
                    }))
                    .limit(4)
                    .toList();

            org.assertj.core.api.Assertions.assertThatThrownBy(() -> jobs.begin(listener -> ""))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("busy");
            begun.forEach(jobs::stop);
            assertThat(jobs.count()).isZero();
        }
    }

    @Test
    void addressIsAPageOnThisMachine() {
        assertThat(page.address())
                .isEqualTo(URI.create("http://127.0.0.1:" + page.address().getPort() + "/"));
    }
}
