package runthrough.cli;

import java.util.concurrent.CancellationException;

/** The user gave up a study, of which what was done is kept. */
final class InterruptedStudyException extends CancellationException {
    private static final long serialVersionUID = 1L;

    private final String what;

    /** Given up; {@code what} was kept, and how to go on. */
    InterruptedStudyException(String what) {
        super(what);
        this.what = what;
    }

    String what() {
        return what;
    }
}
