package runthrough.web.gate;

import java.io.IOException;
import java.nio.channels.SelectableChannel;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.eclipse.jetty.io.SelectorManager;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;

/** The connections that a server has let in, to be closed where it can no longer do so itself: nobody waits for its answer for ever. */
public final class LetIn implements SelectorManager.AcceptListener, AutoCloseable {
    private final Set<SelectableChannel> connections = ConcurrentHashMap.newKeySet();

    private LetIn() {}

    /** Those that {@code server}, which has started, lets in from now on. */
    public static LetIn by(Server server) {
        LetIn connections = new LetIn();
        Stream.of(server.getConnectors())
                .map(ServerConnector.class::cast)
                .forEach(connector -> connector.getSelectorManager().addEventListener(connections));
        return connections;
    }

    @Override
    public void onAccepting(SelectableChannel connection) {
        connections.removeIf(other -> !other.isOpen());
        connections.add(connection);
    }

    /** Closes all that are open. */
    @Override
    public void close() {
        for (SelectableChannel connection : connections) {
            try {
                connection.close();
            } catch (IOException e) {
                // The other side has gone.
            }
        }
    }
}
