package runthrough.web.gate;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/** Says why in JSON, as the page does, where a request does not come so far that the page could: it is no HTTP, or not whole. */
public final class Refused extends ErrorHandler {
    static final String TYPE = "application/json";

    static void refuse(Response response, Callback callback, int status, String message) {
        response.setStatus(status);
        response.write(true, body(response.getHeaders(), message), callback);
    }

    @Override
    protected void generateResponse(
            Request request,
            Response response,
            int status,
            @Nullable String reason,
            @Nullable Throwable cause,
            Callback callback) {
        refuse(response, callback, status, words(status));
    }

    private static String words(int status) {
        return "The request is not what this program reads (" + status + " " + HttpStatus.getMessage(status) + ").";
    }

    private static ByteBuffer body(HttpFields.Mutable headers, String message) {
        headers.put("Content-Type", TYPE);
        headers.put("X-Content-Type-Options", "nosniff");
        headers.put("Cache-Control", "no-store");
        return ByteBuffer.wrap(("{\"message\": \"" + message + "\"}").getBytes(StandardCharsets.UTF_8));
    }
}
