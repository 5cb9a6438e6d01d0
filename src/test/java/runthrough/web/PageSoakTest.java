package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** The page at full load for as long as is asked: {@code mvn -P soak test -Dsoak.seconds=3600}. It answers, and does not grow. */
@EnabledIfSystemProperty(named = "soak.seconds", matches = "\\d+")
class PageSoakTest extends ServedPage {
    private static final int CLIENTS = 6;
    private static final int LOOKS = 10;
    private static final double MEGABYTE = 1e6;

    /** What caches and compiled code may add after the first look (MB). */
    private static final double SLACK = 20;

    private static final List<String> LINES =
            List.of("tube-line", "slitter", "coating-line", "roll-former", "stamping-rethread");
    private static final List<String> ROUTES = List.of(
            "/api/line",
            "/api/answer",
            "/api/edit",
            "/api/sliders",
            "/api/answer",
            "/api/course",
            "/api/report",
            "/api/job/curve",
            "/api/tables",
            "/api/lines");

    private final Map<String, ConcurrentLinkedQueue<Double>> seconds = new ConcurrentSkipListMap<>();
    private final Map<Integer, Integer> statuses = new ConcurrentSkipListMap<>();

    @Test
    void itAnswersAndDoesNotGrow() throws Exception {
        long duration = TimeUnit.SECONDS.toNanos(Long.getLong("soak.seconds"));
        long begin = System.nanoTime();
        ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);
        List<Future<?>> all = new ArrayList<>();
        for (int client = 0; client < CLIENTS; client++) {
            all.add(clients.submit(asking(client, begin + duration)));
        }
        List<Double> heap = new ArrayList<>();
        for (int look = 1; look <= LOOKS; look++) {
            TimeUnit.NANOSECONDS.sleep(begin + duration * look / LOOKS - System.nanoTime());
            heap.add(heapInUse());
            say(
                    "after %4d s: heap in use %5.1f MB",
                    TimeUnit.NANOSECONDS.toSeconds(duration * look / LOOKS), heap.get(look - 1));
        }
        for (Future<?> one : all) {
            one.get(1, TimeUnit.MINUTES);
        }
        clients.shutdown();
        say("answers by status: %s", statuses);
        seconds.forEach(PageSoakTest::sayPercentiles);

        assertThat(statuses.keySet()).isSubsetOf(200, 429, 503);
        assertThat(statuses.get(200))
                .isGreaterThan(
                        statuses.values().stream().mapToInt(count -> count).sum() / 2);
        // The second half against the first, so that one request under way at a look does not decide.
        assertThat(least(heap.subList(LOOKS / 2, LOOKS))).isLessThan(least(heap.subList(0, LOOKS / 2)) + SLACK);
    }

    private Callable<Void> asking(int client, long end) {
        return () -> {
            for (int turn = 2 * LINES.size() * client; System.nanoTime() < end; turn++) {
                // A name of its own each time: what was asked before is not worked out again.
                ObjectNode body = body(shipped(LINES.get(turn % LINES.size()))).put("name", "line-" + turn);
                String route = ROUTES.get(turn / LINES.size() % ROUTES.size());
                if (route.equals("/api/edit")) {
                    body.putArray("changes").addObject().put("path", "run.seed").put("value", String.valueOf(turn));
                }
                ask(route, body);
            }
            return null;
        };
    }

    private void ask(String route, ObjectNode body) throws IOException, InterruptedException {
        long begin = System.nanoTime();
        HttpResponse<byte[]> answer = route.equals("/api/lines") ? send(to(route)) : post(route, body);
        seconds.computeIfAbsent(route, any -> new ConcurrentLinkedQueue<>()).add((System.nanoTime() - begin) / 1e9);
        statuses.merge(answer.statusCode(), 1, Integer::sum);
        if (route.startsWith("/api/job") && answer.statusCode() == 200) {
            String id = JSON.readTree(answer.body()).path("id").asText();
            post("/api/job", JSON.createObjectNode().put("id", id));
            post("/api/job/stop", JSON.createObjectNode().put("id", id));
        }
    }

    private static double heapInUse() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / MEGABYTE;
    }

    private static double least(List<Double> values) {
        return values.stream().mapToDouble(value -> value).min().orElseThrow();
    }

    private static void sayPercentiles(String route, ConcurrentLinkedQueue<Double> times) {
        double[] sorted = times.stream().mapToDouble(time -> time).sorted().toArray();
        double[] at = Arrays.stream(new double[] {0.5, 0.95, 0.99, 1})
                .map(share -> sorted[(int) Math.ceil(share * sorted.length) - 1])
                .toArray();
        say(
                "%-15s %6d answers: median %6.3f s, 95 %% %6.3f s, 99 %% %6.3f s, longest %6.3f s",
                route, sorted.length, at[0], at[1], at[2], at[3]);
    }

    @SuppressWarnings("AnnotateFormatMethod") // used here alone
    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
