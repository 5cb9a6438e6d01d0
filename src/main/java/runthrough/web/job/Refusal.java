package runthrough.web.job;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** A request that is not answered, and why; the message is for the person at the page. */
@SuppressWarnings("serial") // never serialised
public final class Refusal extends RuntimeException {
    /** Why a computation ended for which there is no room. */
    public static final String NO_MEMORY =
            "It needs more memory than there is. Ask for fewer coil changes or replications.";

    private final int status;
    private final String words;

    /** A refusal with an HTTP status from 400 on. */
    public Refusal(int status, String message) {
        super(message);
        this.status = status;
        this.words = message;
    }

    /** The body of an answer that says {@code message} and no more. */
    public static byte[] body(String message) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("message", message)
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Whether memory was short: Java may wrap this where it is met a second time, while what was open is closed. */
    public static boolean isShortMemory(Throwable failure) {
        return Stream.iterate(failure, cause -> cause != null, Throwable::getCause)
                .anyMatch(OutOfMemoryError.class::isInstance);
    }

    /** Why, for the person at the page. */
    public String words() {
        return words;
    }

    public int status() {
        return status;
    }
}
