package runthrough.report.validation;

import org.jspecify.annotations.Nullable;

/** There are no records of checks to read; the message says why and what to do. */
public final class CheckFolderException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CheckFolderException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
