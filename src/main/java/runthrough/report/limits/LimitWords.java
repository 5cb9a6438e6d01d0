package runthrough.report.limits;

import java.util.Optional;
import runthrough.handcalc.Limit;
import runthrough.study.cause.Cause;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.LineLimit;

/** Names of what is driven to a limit, why simulation and hand calculation differ, and what keeps a line from going further. */
final class LimitWords {

    private LimitWords() {}

    static String name(LineLimit.What what) {
        return switch (what) {
            case PROCESS_SPEED -> "fastest process speed";
            case JOINT_CYCLE_TIME_FACTOR -> "longest joint, factor";
            case JOINT_CYCLE_TIME_ADDED -> "longest joint, more time";
            case ENTRY_TOP_SPEED -> "lowest entry top speed";
            case COIL_LENGTH -> "shortest coil";
        };
    }

    static String name(CountLimit.What what) {
        return switch (what) {
            case CREW -> "smallest crew";
            case UNCOILERS -> "fewest uncoilers";
        };
    }

    static String name(LineLimit.Difference difference) {
        return switch (difference) {
            case CHANCE -> "times vary";
            case TARGET -> "the target";
            case REFILL -> "not full again";
            case PREPARATION -> "waiting for coils";
            case SLOWING -> "slowing";
            case DOWNTIME -> "process downtime";
            case COILS_DIFFER -> "coils differ";
            case OCCASIONAL_WORK -> "occasional work";
            case RUN_LENGTH -> "length of the run";
        };
    }

    /**
     * Why simulation and hand calculation do not agree.
     *
     * @param allowed the share of coil changes that may fail
     */
    static String why(LineLimit.Difference difference, String allowed) {
        return switch (difference) {
            case CHANCE -> "The hand calculation takes mean times; on the line times vary, and the longest decide.";
            case TARGET -> "The target lets " + allowed + " of coil changes fail; the hand calculation allows none.";
            case REFILL -> "Coil changes that fail begin with an accumulator that is not full again.";
            case PREPARATION -> "Coil changes that fail wait for their coil to be prepared.";
            case SLOWING -> "The process slows on a low level before it would have to stop, which counts as failed.";
            case DOWNTIME -> "The hand calculation leaves process downtime out.";
            case COILS_DIFFER -> "Several kinds of coil come; the hand calculation takes the hardest one for all.";
            case OCCASIONAL_WORK ->
                "Some work is not done at every coil change; the hand calculation spreads it evenly over all of them.";
            case RUN_LENGTH ->
                "Beyond the closed-form limit a shortfall grows slowly; the run begins with a full accumulator and may end before it"
                        + " is used up.";
        };
    }

    /** What keeps the line from going further; empty where it is not known. */
    static Optional<String> limitingFactor(LineLimit limit) {
        return limit.beyond()
                .flatMap(causes -> causes.main())
                .map(Cause::words)
                .or(() ->
                        limit.neighbour().flatMap(near -> near.limitingFactor()).map(LimitWords::limitingFactor));
    }

    private static String limitingFactor(Limit limit) {
        return switch (limit) {
            case PREPARATION -> "preparation";
            case REFILL -> "refill";
            case CAPACITY -> "capacity";
        };
    }
}
