package runthrough.web.gate;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import runthrough.web.job.Refusal;

/** Says why in JSON, as the page does, where a request does not come so far that the page could: it is no HTTP, or not whole. */
public final class Refused extends ErrorHandler {
    private static final String TYPE = "application/json";
    private static final int NO_ROOM = 503;

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
        // What met short memory may have had no room to say so itself.
        boolean isFull = cause != null && Refusal.isShortMemory(cause);
        refuse(response, callback, isFull ? NO_ROOM : status, isFull ? Refusal.NO_MEMORY : words(status, cause));
    }

    private static String words(int status, @Nullable Throwable cause) {
        String named = status + " " + HttpStatus.getMessage(status);
        return status < HttpStatus.INTERNAL_SERVER_ERROR_500 || status == HttpStatus.HTTP_VERSION_NOT_SUPPORTED_505
                ? "The request is not what this program reads (" + named + ")."
                : "A fault of the program ("
                        + (cause == null ? named : cause.getClass().getSimpleName()) + "). Please report it.";
    }

    private static ByteBuffer body(HttpFields.Mutable headers, String message) {
        headers.put("Content-Type", TYPE);
        headers.put("X-Content-Type-Options", "nosniff");
        headers.put("Cache-Control", "no-store");
        return ByteBuffer.wrap(Refusal.body(message));
    }
}
