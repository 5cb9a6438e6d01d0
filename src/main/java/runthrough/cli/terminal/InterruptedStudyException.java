package runthrough.cli.terminal;

import java.util.concurrent.CancellationException;

/** The user gave up a study, of which what was done is kept. */
public final class InterruptedStudyException extends CancellationException {
    private static final long serialVersionUID = 1L;

    private final String what;

    /** Given up; {@code what} was kept, and how to go on. */
    public InterruptedStudyException(String what) {
        super(what);
        this.what = what;
    }

    public String what() {
        return what;
    }
}
