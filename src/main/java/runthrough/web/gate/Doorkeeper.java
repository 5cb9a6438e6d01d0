package runthrough.web.gate;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import runthrough.web.job.Rounds;

/**
 * Knocks at the server's own door, and has it opened anew where nobody answers: when one request takes all memory, the threads that let
 * in all others may be those that fail, and they do not come back by themselves.
 */
public final class Doorkeeper implements AutoCloseable {
    private static final int PAUSE_MS = 1000;

    /** With one answer; a busy machine is given time. */
    private static final int PATIENCE_MS = 3000;

    /** So often in a row nobody answers before the door is opened anew. */
    private static final int MOST_UNANSWERED = 3;

    private final int port;

    /** A request like any other; any answer to it will do, also that the token is missing. */
    private final byte[] knock;

    private final Rounds.Round opening;
    private final Rounds rounds;
    private int unanswered;

    /**
     * Begins to watch.
     *
     * @param port of this machine that is to answer
     * @param opening of the door
     */
    public Doorkeeper(int port, Rounds.Round opening) {
        this.port = port;
        knock = ("GET /api/kinds HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
        this.opening = opening;
        rounds = new Rounds("page-doorkeeper", PAUSE_MS, this::look);
    }

    private void look() throws Exception {
        unanswered = isAnswered() ? 0 : unanswered + 1;
        if (unanswered == MOST_UNANSWERED) {
            unanswered = 0;
            opening.make();
        }
    }

    private boolean isAnswered() {
        try (Socket socket = new Socket()) {
            socket.setSoTimeout(PATIENCE_MS);
            socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), PATIENCE_MS);
            socket.getOutputStream().write(knock);
            return socket.getInputStream().read() >= 0;
        } catch (IOException e) {
            return false;
        }
    }

    @Override
    public void close() {
        rounds.close();
    }
}
