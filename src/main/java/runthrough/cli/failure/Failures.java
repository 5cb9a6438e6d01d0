package runthrough.cli.failure;

import java.io.PrintWriter;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import runthrough.cli.terminal.BadInputException;
import runthrough.cli.terminal.ClosedPipeException;
import runthrough.cli.terminal.ExitCode;
import runthrough.cli.terminal.InterruptedStudyException;
import runthrough.folder.TemporaryFolderException;
import runthrough.report.write.ReportFolderException;
import runthrough.scenario.source.Problem;
import runthrough.study.StudyException;

/**
 * Reports what went wrong, in one line or a few, and finds the exit code for it.
 *
 * @param err where to tell
 * @param debug whether the user asked for the stack trace of an internal error
 */
public record Failures(PrintWriter err, boolean debug) {

    /** Reports {@code failure} and returns the exit code for it. */
    public int tell(Throwable failure) {
        if (Stream.iterate(failure, one -> one != null, Throwable::getCause)
                .anyMatch(OutOfMemoryError.class::isInstance)) {
            err.println(
                    "out of memory; run fewer coil changes or replications, read a shorter table, or give Java more with"
                            + " -Xmx");
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof ClosedPipeException) {
            return ExitCode.PIPE_CLOSED;
        }
        if (failure instanceof BadInputException bad) {
            bad.lines().stream().map(Problem::withoutControls).forEach(err::println);
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof StudyException
                || failure instanceof ReportFolderException
                || failure instanceof TemporaryFolderException) {
            err.println(Problem.withoutControls(String.valueOf(failure.getMessage())));
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof CancellationException) {
            err.println("given up; "
                    + (failure instanceof InterruptedStudyException kept ? kept.what() : "nothing was written"));
            return ExitCode.GIVEN_UP;
        }
        return tellOfOurOwn(failure);
    }

    private int tellOfOurOwn(Throwable failure) {
        err.println("internal error (" + String.valueOf(failure).replaceAll("\\s+", " ")
                + "). This is a fault of the program: please report it with the scenario and the command.");
        if (debug) {
            failure.printStackTrace(err);
        } else {
            err.println("The same command with --debug prints what helps to find it.");
        }
        return ExitCode.INTERNAL_ERROR;
    }
}
