package runthrough.web.gate;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * From where the page may be asked for.
 *
 * @param address that the server listens on
 * @param names by which it may be called, without the port; that by which this machine calls it first
 * @param token that the link holds; empty where everybody who gets there may ask
 */
public record Access(String address, List<String> names, Optional<String> token) {
    /** Name of the token in a link. */
    static final String TOKEN = "token";

    private static final String LOOPBACK = "127.0.0.1";
    private static final String LOCAL = "localhost";

    /** Of the token: too many for anybody to try. */
    private static final int BYTES = 16;

    public Access {
        names = List.copyOf(names);
    }

    /** From this machine alone. */
    public static Access ofThisMachine() {
        return new Access(LOOPBACK, List.of(LOOPBACK, LOCAL), Optional.empty());
    }

    /** From every device of the local network, by a link with a new token. */
    public static Access ofTheNetwork() {
        byte[] random = new byte[BYTES];
        new SecureRandom().nextBytes(random);
        Set<String> names = new LinkedHashSet<>(List.of(LOOPBACK, LOCAL));
        names.addAll(networkAddresses());
        return new Access(
                "0.0.0.0",
                List.copyOf(names),
                Optional.of(Base64.getUrlEncoder().withoutPadding().encodeToString(random)));
    }

    /** Whether others than this machine can reach it. */
    public boolean isOpen() {
        return token.isPresent();
    }

    /** The links that open the page: that for this machine first. */
    public List<URI> links(int port) {
        return names.stream()
                .filter(name -> !name.equals(LOCAL))
                .map(name -> URI.create("http://" + name + ":" + port + "/"
                        + token.map(digits -> "?" + TOKEN + "=" + digits).orElse("")))
                .toList();
    }

    /** What a request may name as its host. */
    Set<String> hosts(int port) {
        return names.stream().map(name -> name + ":" + port).collect(Collectors.toSet());
    }

    /** Whether {@code host}, a name with a port, is this machine's name for itself. */
    static boolean isThisMachine(String host) {
        return Stream.of(LOOPBACK, LOCAL).anyMatch(name -> host.startsWith(name + ":"));
    }

    /** Whether {@code said} is the token; takes as long for every answer. */
    boolean isToken(String said) {
        return token.filter(real -> MessageDigest.isEqual(
                        real.getBytes(StandardCharsets.UTF_8), said.getBytes(StandardCharsets.UTF_8)))
                .isPresent();
    }

    /** Addresses of this machine in its networks. */
    private static List<String> networkAddresses() {
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(one -> one instanceof Inet4Address && !one.isLoopbackAddress())
                    .map(InetAddress::getHostAddress)
                    .toList();
        } catch (SocketException e) {
            return List.of();
        }
    }
}
