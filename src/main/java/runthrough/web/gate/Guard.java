package runthrough.web.gate;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import runthrough.web.job.Refusal;

/**
 * Looks at every request before it is answered.
 *
 * <p>Whoever knows the port could make a browser send requests here from another page, so every request must name this server
 * as its host, come from this page where it says where it comes from, and bring JSON where it brings anything. Where the page is
 * open to the network it must have the token, too: in the link, or in the cookie that the link leaves.
 */
public final class Guard {
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private static final String JSON = "application/json";
    private static final String CHARSET = "charset";
    private static final Set<String> UTF_8 = Set.of(CHARSET + "=utf-8", CHARSET + "=\"utf-8\"");

    private final Access access;

    /** A guard who lets in whom {@code access} allows. */
    public Guard(Access access) {
        this.access = access;
    }

    /**
     * Lets {@code context} in, or refuses it.
     *
     * @param port that the server listens at
     */
    public void check(Context context, int port) {
        context.header("Content-Security-Policy", POLICY);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Cross-Origin-Resource-Policy", "same-origin");
        context.header("Cache-Control", "no-store");
        Set<String> hosts = access.hosts(port);
        String host = String.valueOf(context.header("Host"));
        if (Access.isThisMachine(host)) {
            // Browsers heed it from this machine or over https alone, and complain of it elsewhere.
            context.header("Cross-Origin-Opener-Policy", "same-origin");
        }
        if (!hosts.contains(host)) {
            throw new Refusal(
                    403, "This page answers on http://" + access.names().get(0) + ":" + port + "/ only.");
        }
        Optional<String> origin = Optional.ofNullable(context.header("Origin"));
        if (origin.isPresent() && hosts.stream().noneMatch(one -> origin.get().equals("http://" + one))) {
            throw new Refusal(403, "Requests from other pages are not answered.");
        }
        if (access.isOpen()) {
            checkToken(context, port);
        }
        if (context.method().name().equals("POST") && !isJson(String.valueOf(context.header("Content-Type")))) {
            throw new Refusal(415, "Requests bring JSON, in UTF-8.");
        }
    }

    private static boolean isJson(String contentType) {
        List<String> parts = Stream.of(contentType.toLowerCase(Locale.ROOT).split(";", -1))
                .map(String::strip)
                .toList();
        return parts.get(0).equals(JSON)
                && parts.stream().skip(1).allMatch(part -> !part.startsWith(CHARSET) || UTF_8.contains(part));
    }

    private void checkToken(Context context, int port) {
        // A browser keeps the cookies of all ports of a machine together.
        String cookie = Access.TOKEN + "-" + port;
        String linked = context.queryParam(Access.TOKEN);
        if (linked != null && access.isToken(linked)) {
            Cookie kept = new Cookie(cookie, linked);
            kept.setHttpOnly(true);
            kept.setSameSite(SameSite.STRICT);
            context.cookie(kept);
            return;
        }
        String said = context.cookie(cookie);
        if (said == null || !access.isToken(said)) {
            throw new Refusal(401, "Open this page by the link that the program has printed: it holds a token.");
        }
    }
}
