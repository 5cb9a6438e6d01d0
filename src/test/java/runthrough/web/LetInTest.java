package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CountDownLatch;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.Test;
import runthrough.web.gate.LetIn;

class LetInTest {

    /** A server that takes a request and never answers, as one does that has lost its threads. */
    @Test
    void nobodyWaitsForAServerThatIsGivenUp() throws Exception {
        CountDownLatch asked = new CountDownLatch(1);
        Server server = new Server(0);
        server.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) {
                asked.countDown();
                return true;
            }
        });
        server.start();
        LetIn connections = LetIn.by(server);
        int port = ((ServerConnector) server.getConnectors()[0]).getLocalPort();
        try (Socket client = new Socket(InetAddress.getLoopbackAddress(), port)) {
            client.setSoTimeout(60_000);
            client.getOutputStream().write("GET / HTTP/1.1\r\nHost: a\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            asked.await();
            connections.close();

            assertThat(client.getInputStream().read()).isEqualTo(-1);
        } finally {
            server.stop();
        }
    }
}
