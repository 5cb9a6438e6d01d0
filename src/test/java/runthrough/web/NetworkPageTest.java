package runthrough.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runthrough.web.gate.Access;

/** The page where it is open to the local network: who has the link is answered, and nobody else. */
class NetworkPageTest {
    private static PageServer page;
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(cookies).build();

    @BeforeAll
    static void serve() throws IOException {
        page = PageServer.start("runthrough test", 1, 0, Access.ofTheNetwork());
    }

    @AfterAll
    static void end() {
        page.close();
    }

    private HttpResponse<String> get(URI address) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return get(page.address().resolve(path));
    }

    @Test
    void itListensToTheNetwork() throws IOException {
        InetAddress other = InetAddress.getByAddress(new byte[] {127, 0, 0, 2});
        try (Socket socket = new Socket(other, page.address().getPort())) {
            assertThat(socket.isConnected()).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/stopwatch",
                "/main.js",
                "/api/lines",
                "/no-such",
                "/?token=",
                "/?token=AAAAAAAAAAAAAAAAAAAAAA"
            })
    void withoutTheTokenNothingIsAnswered(String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = get(path);

        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.body())
                .isEqualTo(
                        "{\"message\":\"Open this page by the link that the program has printed: it holds a token.\"}");
        assertThat(cookies.getCookieStore().getCookies()).isEmpty();
    }

    /** The link leaves a cookie that no script and no other site can use; from then on the address needs no token. */
    @Test
    void theLinkOpensThePageAndLeavesACookie() throws IOException, InterruptedException {
        HttpResponse<String> opened = get(page.links().get(0));

        assertThat(opened.statusCode()).isEqualTo(200);
        assertThat(opened.headers().firstValue("Set-Cookie").orElseThrow())
                .startsWith("token-" + page.address().getPort() + "=")
                .contains("HttpOnly", "SameSite=Strict", "Path=/");
        assertThat(get("/api/lines").statusCode()).isEqualTo(200);
        assertThat(get("/main.js").statusCode()).isEqualTo(200);
    }

    @Test
    void theTokenIsNewEachTime() {
        assertThat(Access.ofTheNetwork().token())
                .isPresent()
                .isNotEqualTo(Access.ofTheNetwork().token());
        assertThat(Access.ofTheNetwork().token().orElseThrow()).hasSize(22);
    }

    /** Names that lead here and are not of this machine, as an attacker's might. */
    @Test
    void aRequestThatNamesAnotherHostIsRefusedWithTheTokenToo() throws IOException {
        String query = page.links().get(0).getQuery();
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), page.address().getPort())) {
            socket.getOutputStream()
                    .write(("GET /?" + query + " HTTP/1.1\r\nHost: example.test\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                    .startsWith("HTTP/1.1 403");
        }
    }

    /** A page for this machine alone knows no token and leaves no cookie. */
    @Test
    void withoutTheWishThereIsNeitherTokenNorCookie() throws IOException, InterruptedException {
        try (PageServer alone = PageServer.start("runthrough test", 1, 0)) {
            HttpResponse<String> answer = get(alone.address().resolve("/?token=x"));

            assertThat(alone.links()).isEqualTo(List.of(alone.address()));
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.headers().firstValue("Set-Cookie")).isEmpty();
        }
    }
}
