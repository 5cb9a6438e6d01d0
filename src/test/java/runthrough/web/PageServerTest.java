package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.web.job.Jobs;
import runthrough.web.job.Refusal;

/** Whom the page's server answers, and what it keeps to. */
class PageServerTest extends ServedPage {

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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "application/json; charset=nonsense",
                "application/json; charset=\"",
                "application/json; charset=*",
                "application/json;charset=utf-7",
                "application/jsonp"
            })
    void aRequestInNoCharactersThatAreReadIsRefused(String type) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to("/api/line")
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofString("{\"text\": \"\"}")));

        assertThat(answer.statusCode()).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"application/json", "application/json; charset=UTF-8", "Application/JSON;charset=\"utf-8\""})
    void aRequestMaySayThatItIsUtf8(String type) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to("/api/line")
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofString(body("title: a").toString())));

        assertThat(answer.statusCode()).isEqualTo(200);
    }

    @Test
    void aRequestThatIsTooLargeIsRefused() throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = post("/api/line", body("x".repeat(2_000_000)));

        assertThat(answer.statusCode()).isEqualTo(413);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"text\": 1, \"other\": 2}",
                "{\"units\": \"us\"}",
                "{\"text\": {\"a\": 1}}",
                "null"
            })
    void aRequestThatIsNoneIsRefusedWithoutATrace(String body) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to("/api/line")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8))
                .contains("message")
                .doesNotContain("at runthrough");
    }

    @Test
    void aChangeThatIsNoneIsRefused() throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to("/api/edit")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"text\": \"title: a\", \"changes\": [null]}")));

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains("The request lacks a change.");
    }

    /** 10^6 h at 45 m/min are 2.7 10^9 m, coils of 724 m: nearly four million of them. */
    @ParameterizedTest
    @ValueSource(strings = {"/api/answer", "/api/report", "/api/tables", "/api/job/fixes", "/api/job/curve"})
    void aReplicationThatWouldFillTheMemoryIsRefused(String path) throws IOException, InterruptedException {
        String text = shipped("tube-line").replaceFirst("run: .*", "run: {time: 1000000 h, replications: 2}");

        HttpResponse<byte[]> answer = post(path, body(text));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8))
                .contains("about 3 730 000 coil changes; the page runs at most 200 000");
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
                    .limit(8)
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

    /** Requests that come a byte at a time hold no thread of those that answer, and not for ever. */
    @Test
    void slowRequestsHoldUpNobodyAndAreGivenUp() throws IOException, InterruptedException {
        int port = to("/api/lines").build().uri().getPort();
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 400; i++) {
                Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
                slow.add(socket);
                // More than the server's buffer for a connection.
                socket.getOutputStream()
                        .write(("POST /api/line HTTP/1.1\r\nHost: 127.0.0.1:" + port
                                        + "\r\nContent-Type: application/json\r\nContent-Length: 50000\r\n\r\n{"
                                        + " ".repeat(9500))
                                .getBytes(StandardCharsets.US_ASCII));
            }
            send(to("/api/lines"));
            for (int i = 0; i < 3; i++) {
                for (Socket socket : slow) {
                    socket.getOutputStream().write(' ');
                }
                long begin = System.nanoTime();
                assertThat(send(to("/api/lines")).statusCode()).isEqualTo(200);
                assertThat((System.nanoTime() - begin) / 1e9).isLessThan(1);
                Thread.sleep(1000);
            }
            slow.get(0).setSoTimeout(30_000);
            assertThat(new String(slow.get(0).getInputStream().readAllBytes(), StandardCharsets.US_ASCII))
                    .startsWith("HTTP/1.1 408")
                    .endsWith("{\"message\":\"The request did not come whole within 15 s.\"}");
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    @Test
    void aRequestThatDoesNotSayThatItIsTooLargeIsRefused() throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = send(to("/api/line")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(new byte[1_500_000]))));

        assertThat(answer.statusCode()).isEqualTo(413);
    }

    @Test
    void moreChangesThanAPersonMakesAreRefused() throws IOException, InterruptedException {
        ObjectNode body = body("title: a");
        ArrayNode changes = body.putArray("changes");
        for (int i = 0; i <= 100; i++) {
            changes.addObject().put("path", "title").put("value", "b");
        }

        HttpResponse<byte[]> answer = post("/api/edit", body);

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains("More than 100 changes at once.");
    }

    @Test
    void headersThatAreTooLargeAreRefused() throws IOException {
        assertThat(raw("GET / HTTP/1.1\r\nHost: 127.0.0.1:" + page.address().getPort() + "\r\nX: " + "x".repeat(17_000)
                        + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 431");
    }

    /** A coil of sixty kilometres across lasts for years, through more shifts than anybody waits for. */
    @Test
    void aCourseThatTakesLongerThanThePageWaitsIsGivenUp() throws IOException, InterruptedException {
        String text = shipped("tube-line")
                .replaceFirst("outer-diameter: [^ ]+ [a-z]+", "outer-diameter: 60 km")
                .replaceFirst(
                        "crew: 2", "shifts: [{name: a, hours: 0.001 s, crew: 2}, {name: b, hours: 0.001 s, crew: 2}]");

        HttpResponse<byte[]> answer = post("/api/course", body(text));

        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains("takes longer than the page waits");
        assertThat(answer.statusCode()).isEqualTo(503);
    }

    /** More kinds of coil than anybody writes: what is too long is read no further, by no route. */
    @ParameterizedTest
    @ValueSource(strings = {"line", "answer", "sliders", "course"})
    void aMixThatIsTooLongIsReadNoFurther(String route) throws IOException, InterruptedException {
        String text = shipped("tube-line")
                .replaceFirst(
                        "(?m)^coil:\\R( .*\\R)+",
                        "coils:\n  mix:\n"
                                + "    - {weight: 1, thickness: 2 mm, width: 200 mm, density: 7850 kg/m3, mass: 5 t}\n"
                                        .repeat(9000));
        long begin = System.nanoTime();

        HttpResponse<byte[]> answer = post("/api/" + route, body(text));

        assertThat(answer.statusCode()).isIn(200, 422);
        assertThat(System.nanoTime() - begin).isLessThan(4_000_000_000L);
    }

    /** Each change of so long a text reads it anew. */
    @Test
    void changesThatTakeLongerThanThePageWaitsAreGivenUp() throws IOException, InterruptedException {
        ObjectNode body = body(shipped("tube-line")
                + "\n# a comment of a hundred letters or so, and many more of its kind".repeat(14_000));
        ArrayNode changes = body.putArray("changes");
        for (int i = 0; i < 100; i++) {
            changes.addObject().put("path", "process.scrap-per-stop").put("value", i + " m");
        }
        long begin = System.nanoTime();

        HttpResponse<byte[]> answer = post("/api/edit", body);

        assertThat(answer.statusCode()).isIn(200, 503);
        assertThat(System.nanoTime() - begin).isLessThan(15_000_000_000L);
    }

    /** What comes before any page: a path without end, a wish that nobody can meet, a language that is none. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "414 | GET /LONG HTTP/1.1",
                "417 | GET / HTTP/1.1~Expect: 5",
                "505 | GET / HTTP/7.0",
                "400 | GET / / HTTP/1.1",
                "400 | NOTHING",
                "400 | GET / HTTP/1.1~Content-Length: -1",
                "400 | GET / HTTP/1.1~Content-Length: 1~Content-Length: 2"
            })
    void aRequestThatIsNoHttpIsRefusedInTheWordsOfThePage(int status, String request) throws IOException {
        String lines = request.replace("LONG", "x".repeat(20_000)).replace("~", "\r\n");

        String answer =
                raw(lines + "\r\nHost: 127.0.0.1:" + page.address().getPort() + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).startsWith("HTTP/1.1 " + status).contains("Content-Type: application/json", "nosniff");
        assertThat(answer).contains("{\"message\":\"The request is not what this program reads (" + status + " ");
    }

    /** Not a byte of it has to come. */
    @ParameterizedTest
    @ValueSource(strings = {"1000001", "99999999999999"})
    void aRequestThatSaysThatItIsTooLargeIsRefusedAtOnce(String length) throws IOException {
        long begin = System.nanoTime();

        String answer = raw("POST /api/answer HTTP/1.1\r\nHost: 127.0.0.1:"
                + page.address().getPort() + "\r\nContent-Type: application/json\r\nContent-Length: " + length
                + "\r\nConnection: close\r\n\r\n{}");

        assertThat(answer).startsWith("HTTP/1.1 413").contains("The request is larger than 1 MB.");
        assertThat(System.nanoTime() - begin).isLessThan(10_000_000_000L);
    }

    /** 1000 replications of 200 000 coil changes take minutes. */
    @Test
    void aLineThatTakesLongerThanThePageWaitsIsGivenUp() throws IOException, InterruptedException {
        String text = shipped("tube-line").replaceFirst("run: .*", "run: {coil-changes: 200000, replications: 1000}");

        HttpResponse<byte[]> answer = post("/api/report", body(text));

        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains("takes longer than the page waits");
    }
}
