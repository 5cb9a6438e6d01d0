package runthrough.report.verdict;

import java.util.Optional;
import runthrough.study.cause.Cause;
import runthrough.study.cause.Reason;

/** What is removed for the worth of a cause, in the same words wherever that is shown. */
final class RemovalWords {
    private RemovalWords() {}

    /** What goes with {@code reason}. */
    static String name(Reason reason) {
        return more(reason).orElse(reason.words());
    }

    /** What goes where that is more than the cause itself. */
    static Optional<String> more(Reason reason) {
        return switch (reason.cause()) {
            case WAITING_FOR_PREPARATION -> Optional.of("all preparation");
            case SEVERAL_TOGETHER -> Optional.of("all causes but the refill");
            default -> Optional.empty();
        };
    }

    /** Whether all causes go: that gains more than any one of them, and says nothing of the one that it stands for. */
    static boolean isAll(Reason reason) {
        return reason.cause() == Cause.SEVERAL_TOGETHER;
    }
}
