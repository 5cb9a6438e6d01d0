package runthrough.web.job;

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

    /** Why, for the person at the page. */
    public String words() {
        return words;
    }

    public int status() {
        return status;
    }
}
