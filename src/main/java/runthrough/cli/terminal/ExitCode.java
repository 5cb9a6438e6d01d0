package runthrough.cli.terminal;

/** What the program reports to scripts. */
public final class ExitCode {
    /** Done. */
    public static final int DONE = 0;
    /** An error of the program itself. */
    public static final int INTERNAL_ERROR = 1;
    /** Something given by the user cannot be used, there is no memory for it, or an output cannot be written. */
    public static final int BAD_INPUT = 2;
    /** The target is not met, or not decided, and the user asked for that to be a failure. */
    public static final int TARGET_NOT_MET = 3;
    /** A check of the program against an outside value does not agree. */
    public static final int CHECK_FAILED = 4;
    /** Cases of a sweep could not be run; the others are there. */
    public static final int CASE_FAILED = 5;
    /** Given up by the user, as shells count an interrupt. */
    public static final int GIVEN_UP = 130;
    /** The reader of a pipe has gone, as shells count a closed pipe. */
    public static final int PIPE_CLOSED = 141;

    public static final String DONE_MEANS = "0:done";
    public static final String INTERNAL_ERROR_MEANS = "1:internal error of the program";
    public static final String BAD_INPUT_MEANS =
            "2:bad input, no memory for it, or an output cannot be written; no file is left half written";
    public static final String TARGET_NOT_MET_MEANS = "3:with --require-target: a target is not met, or not decided";
    public static final String CHECK_FAILED_MEANS = "4:a check does not agree";

    public static final String CASE_FAILED_MEANS =
            "5:one case or more could not be run, as its line says; all others were";

    public static final String GIVEN_UP_MEANS = "130:given up, by Ctrl-C; 143 where the system ended the program";

    public static final String PIPE_CLOSED_MEANS = "141:the reader of a pipe has gone";

    private ExitCode() {}
}
