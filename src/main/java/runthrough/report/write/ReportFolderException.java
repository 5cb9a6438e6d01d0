package runthrough.report.write;

import org.jspecify.annotations.Nullable;

/** A report that could not be written; the message is for the user and says why. Nothing of it has been left behind. */
public final class ReportFolderException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public ReportFolderException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
