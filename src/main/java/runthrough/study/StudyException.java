package runthrough.study;

/** A study that cannot be done; the message is for the user and says why. */
public final class StudyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** An error with a message for the user. */
    public StudyException(String message) {
        super(message);
    }

    /** An error with a message for the user, and what it came from. */
    public StudyException(String message, Throwable cause) {
        super(message, cause);
    }
}
