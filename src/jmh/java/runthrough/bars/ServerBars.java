package runthrough.bars;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The server of the page: from its start to its first quick answer, and its quick answers once warm (ms, by the clock). */
final class ServerBars {
    /** No browser shows a page sooner. */
    private static final int BROWSER_STARTS_MILLIS = 500;

    private static final int STARTS = 5;
    private static final int WARM_UP = 150;
    private static final int ANSWERS = 60;
    private static final Pattern ADDRESS = Pattern.compile("http://\\S+/");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final List<String> jars;
    private final List<String> lines;

    /** Servers of {@code jars}, asked about the shipped {@code lines}. */
    ServerBars(List<String> jars, List<String> lines) {
        this.jars = jars;
        this.lines = lines;
    }

    void print(PrintStream out) throws IOException, InterruptedException {
        Medians start = new Medians(jars.size(), STARTS);
        Medians atOnce = new Medians(jars.size(), STARTS);
        Medians soon = new Medians(jars.size(), STARTS);
        for (int time = 0; time < STARTS; time++) {
            for (int jar = 0; jar < jars.size(); jar++) {
                long begin = System.nanoTime();
                try (Served server = serve(jars.get(jar))) {
                    start.set(jar, time, milliseconds(begin));
                    atOnce.set(jar, time, first(server));
                }
                try (Served server = serve(jars.get(jar))) {
                    Thread.sleep(BROWSER_STARTS_MILLIS);
                    soon.set(jar, time, first(server));
                }
            }
        }
        out.printf("%n%-34s%s%n", "", "ms, jar by jar");
        row(out, "server start", start);
        row(out, "first answer, asked at once", atOnce);
        row(out, "first answer, half a second later", soon);
        for (String line : lines) {
            row(out, "answer, warm: " + line, warm(line));
        }
    }

    private double first(Served server) throws IOException, InterruptedException {
        String text = text(server, lines.get(0));
        long asked = System.nanoTime();
        answer(server, text);
        return milliseconds(asked);
    }

    private void row(PrintStream out, String name, Medians medians) {
        out.printf("%-34s", name);
        for (int jar = 0; jar < jars.size(); jar++) {
            out.printf(Locale.ROOT, "%10.0f", medians.of(jar));
        }
        out.println();
    }

    /** Answers to a line whose seed changes from one to the next, so that none is known. */
    private Medians warm(String line) throws IOException, InterruptedException {
        Medians answers = new Medians(jars.size(), ANSWERS);
        for (int jar = 0; jar < jars.size(); jar++) {
            try (Served server = serve(jars.get(jar))) {
                String text = text(server, line);
                for (int i = -WARM_UP; i < ANSWERS; i++) {
                    String changed = text.replaceFirst("seed: \\d+", "seed: " + (i + WARM_UP + 1));
                    long begin = System.nanoTime();
                    answer(server, changed);
                    answers.set(jar, Math.max(0, i), milliseconds(begin));
                }
            }
        }
        return answers;
    }

    private static double milliseconds(long since) {
        return (System.nanoTime() - since) / 1e6;
    }

    private record Served(Process process, URI address) implements AutoCloseable {
        @Override
        public void close() {
            process.destroy();
        }
    }

    private static Served serve(String jar) throws IOException {
        Process process = new ProcessBuilder("java", "-jar", jar, "serve", "--no-browser")
                .redirectErrorStream(true)
                .start();
        BufferedReader said = process.inputReader();
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher address = ADDRESS.matcher(line);
            if (address.find()) {
                return new Served(process, URI.create(address.group()));
            }
        }
        throw new IOException(jar + " serves nothing");
    }

    private String text(Served server, String line) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(server.address().resolve("api/lines")).build();
        for (JsonNode one : JSON.readTree(
                client.send(request, HttpResponse.BodyHandlers.ofString()).body())) {
            if (one.get("name").asText().equals(line)) {
                return one.get("text").asText();
            }
        }
        throw new IOException("no line " + line);
    }

    private void answer(Served server, String text) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(server.address().resolve("api/answer"))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(
                        JSON.writeValueAsString(Map.of("text", text, "units", "metric", "effort", 0))))
                .build();
        HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IOException(answer.body());
        }
    }
}
