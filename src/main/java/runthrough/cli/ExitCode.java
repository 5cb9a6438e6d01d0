package runthrough.cli;

/** What the program reports to scripts. */
final class ExitCode {
    /** Done. */
    static final int DONE = 0;
    /** An error of the program itself. */
    static final int INTERNAL_ERROR = 1;
    /** Something given by the user cannot be used, or an output cannot be written. */
    static final int BAD_INPUT = 2;
    /** The target is not met, or not decided, and the user asked for that to be a failure. */
    static final int TARGET_NOT_MET = 3;
    /** A check of the program against an outside value does not agree. */
    static final int CHECK_FAILED = 4;
    /** Given up by the user, as shells count an interrupt. */
    static final int GIVEN_UP = 130;

    static final String DONE_MEANS = "0:done";
    static final String INTERNAL_ERROR_MEANS = "1:internal error of the program";
    static final String BAD_INPUT_MEANS = "2:bad input, or the output cannot be written; nothing was written";
    static final String TARGET_NOT_MET_MEANS = "3:with --require-target: the target is not met, or not decided";
    static final String CHECK_FAILED_MEANS = "4:a check does not agree";

    private ExitCode() {}
}
