package runthrough.cli.terminal;

/** Whoever read what the program prints has gone: there is nobody left to work for. */
public final class ClosedPipeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ClosedPipeException(Throwable cause) {
        super("the reader has gone", cause);
    }
}
