package runthrough.web;

/** A request that is not answered, and why; the message is for the person at the page. */
@SuppressWarnings("serial") // never serialised
final class Refusal extends RuntimeException {
    private final int status;

    /** A refusal with an HTTP status from 400 on. */
    Refusal(int status, String message) {
        super(message);
        this.status = status;
    }

    int status() {
        return status;
    }
}
