package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The page goes on although what lets requests in has failed. */
class DoorkeeperTest extends ServedPage {
    private static final Duration LONGEST = Duration.ofSeconds(30);

    @Test
    void whenNobodyLetsRequestsInTheDoorIsOpenedAnew() throws Exception {
        int port = page.address().getPort();
        assertThat(statusLine(port)).startsWith("HTTP/1.1 ");
        Thread letsIn = Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().contains("-acceptor-")
                        && thread.getName().contains(":" + port + "}"))
                .findFirst()
                .orElseThrow();

        // It has this name for as long as it lets requests in.
        for (int i = 0; i < 1000 && letsIn.getName().contains("-acceptor-"); i++) {
            letsIn.interrupt();
            Thread.sleep(10);
        }

        assertThat(letsIn.getName()).doesNotContain("-acceptor-");
        assertThat(answersWithin(port)).isTrue();
        assertThat(page.address().getPort()).isEqualTo(port);
    }

    private static boolean answersWithin(int port) throws InterruptedException {
        for (Instant end = Instant.now().plus(LONGEST); Instant.now().isBefore(end); Thread.sleep(50)) {
            try {
                return statusLine(port).startsWith("HTTP/1.1 ");
            } catch (IOException e) {
                // Not yet.
            }
        }
        return false;
    }

    /** By a connection of its own; what was let in before goes on. */
    private static String statusLine(int port) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout((int) LONGEST.toMillis());
            socket.getOutputStream()
                    .write(("GET / HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .findFirst()
                    .orElse("");
        }
    }
}
