package runthrough.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.util.concurrent.CancellationException;
import runthrough.study.StudyException;

/**
 * Tells the user what went wrong, in a line or some, and finds the exit code for it.
 *
 * @param err where to tell
 * @param debug whether the user asked for the stack trace of an internal error
 */
record Failures(PrintWriter err, boolean debug) {

    /** Tells of {@code failure} and returns the exit code for it. */
    int tell(Throwable failure) {
        if (failure instanceof BadInputException bad) {
            bad.lines().forEach(err::println);
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof StudyException) {
            err.println(failure.getMessage());
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof IOException io) {
            err.println(describe(io));
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof UncheckedIOException unchecked && unchecked.getCause() != null) {
            return tell(unchecked.getCause());
        }
        if (failure instanceof CancellationException) {
            err.println("given up; nothing was written");
            return ExitCode.GIVEN_UP;
        }
        return tellOfOurOwn(failure);
    }

    /** An error of the system in words; its own text is often no more than the file's name. */
    static String describe(IOException failure) {
        if (failure instanceof FileSystemException file && file.getFile() != null) {
            String reason = failure instanceof AccessDeniedException
                    ? "permission denied"
                    : file.getReason() == null ? failure.getClass().getSimpleName() : file.getReason();
            return file.getFile() + ": cannot be written (" + reason + ")."
                    + " Give another folder, or make room or get permission there.";
        }
        return "cannot be written (" + failure.getMessage() + "). Make room on the disk, or give another folder.";
    }

    private int tellOfOurOwn(Throwable failure) {
        if (failure instanceof OutOfMemoryError) {
            err.println("out of memory; run fewer coil changes or replications, or give Java more with -Xmx");
        } else {
            err.println("internal error (" + String.valueOf(failure).replaceAll("\\s+", " ")
                    + "). This is a fault of the program: please report it with the scenario and the command.");
        }
        if (debug) {
            failure.printStackTrace(err);
        } else {
            err.println("The same command with --debug prints what helps to find it.");
        }
        return ExitCode.INTERNAL_ERROR;
    }
}
