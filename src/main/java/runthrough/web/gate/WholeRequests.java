package runthrough.web.gate;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.content.ByteBufferContentSource;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.Promise;
import org.jspecify.annotations.Nullable;

/**
 * Reads a request whole before it takes a thread, so that slow clients hold none, and for so long only, so that they hold no memory
 * either.
 */
public final class WholeRequests extends Handler.Wrapper {
    private static final int REQUEST_TIMEOUT = 408;
    /** The status of a request that is. */
    public static final int TOO_LARGE = 413;

    private static final int NO_REQUEST = 400;

    private final int largest;
    private final int patience;

    /**
     * Reads requests.
     *
     * @param largest that is read (bytes)
     * @param patience with the content of one (s)
     */
    public WholeRequests(int largest, int patience) {
        this.largest = largest;
        this.patience = patience;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (request.getLength() > largest) {
            Refused.refuse(response, callback, TOO_LARGE, tooLarge(largest));
            return true;
        }
        if (request.getLength() == 0) {
            return super.handle(request, response, callback);
        }
        CompletableFuture<byte[]> content = new CompletableFuture<>();
        CompletableFuture<byte[]> unused = content.orTimeout(patience, TimeUnit.SECONDS)
                .whenCompleteAsync(
                        (bytes, failure) -> answer(new Whole(request, bytes), failure, response, callback),
                        getServer().getThreadPool());
        Content.Source.asByteArrayAsync(request, largest, Promise.Invocable.toPromise(content));
        return true;
    }

    private void answer(Whole request, @Nullable Throwable failure, Response response, Callback callback) {
        if (failure instanceof TimeoutException) {
            Refused.refuse(
                    response, callback, REQUEST_TIMEOUT, "The request did not come whole within " + patience + " s.");
            return;
        } else if (failure != null) {
            boolean isBroken = failure instanceof IOException;
            Refused.refuse(
                    response,
                    callback,
                    isBroken ? NO_REQUEST : TOO_LARGE,
                    isBroken ? "The request broke off." : tooLarge(largest));
            return;
        }
        try {
            if (!super.handle(request, response, callback)) {
                Refused.refuse(response, callback, NO_REQUEST, "Nobody answers this.");
            }
        } catch (Exception e) {
            callback.failed(e);
        }
    }

    /** Why a request of more than {@code largest} bytes is not read. */
    public static String tooLarge(int largest) {
        return "The request is larger than " + largest / 1_000_000
                + " MB. Make the scenario or its tables shorter, or use the command line.";
    }

    /** A request with its content. */
    private static final class Whole extends Request.Wrapper {
        private final ByteBufferContentSource content;

        Whole(Request request, byte @Nullable [] content) {
            super(request);
            this.content = new ByteBufferContentSource(ByteBuffer.wrap(content == null ? new byte[0] : content));
        }

        @Override
        public Content.Chunk read() {
            return content.read();
        }

        @Override
        public void demand(Runnable whenThere) {
            content.demand(whenThere);
        }
    }
}
