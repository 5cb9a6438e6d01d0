package runthrough.report.limits;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runthrough.handcalc.Limit;
import runthrough.plant.check.Message;
import runthrough.quantity.Kind;
import runthrough.quantity.Units;
import runthrough.report.LargestCause;
import runthrough.study.lever.Lever;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;
import runthrough.study.search.Crossing;

/** Names of what is driven to a limit, why simulation and hand calculation differ, and what keeps a line from going further. */
final class LimitWords {
    /** What stands in the place of a number of people or uncoilers where none that was tried meets the target. */
    static final String NO_NUMBER_ENOUGH = "no number is enough";

    private LimitWords() {}

    static String name(LineLimit limit) {
        return switch (limit.what()) {
            case PROCESS_SPEED -> "fastest process speed";
            case JOINT_CYCLE_TIME -> isTakenOff(limit) ? "off every join pass" : "added to every join pass";
            case CAPACITY -> "smallest capacity";
            case REJECTS -> "most rejected joints";
            case CREW -> "smallest crew";
            case UNCOILERS -> "fewest uncoilers";
            case ELEMENT -> "seconds off an element";
            case ENTRY_TOP_SPEED -> "lowest entry top speed";
            case COIL_LENGTH -> "shortest coil";
        };
    }

    /** Whether the limit is a time that must come off every pass of the join work, rather than one that may be added to it. */
    static boolean isTakenOff(LineLimit limit) {
        return limit.what() == Lever.What.JOINT_CYCLE_TIME
                && !(limit.crossing().answer().orElse(Double.NEGATIVE_INFINITY) > 0);
    }

    static String name(CountLimit.What what) {
        return switch (what) {
            case CREW -> "smallest crew";
            case UNCOILERS -> "fewest uncoilers";
        };
    }

    /** What stands in the place of a limit where the target is missed at every value tried. */
    static String noneEnough(Lever.What what) {
        return switch (what) {
            case PROCESS_SPEED -> "no value is slow enough";
            case JOINT_CYCLE_TIME, ELEMENT -> "no value is short enough";
            case CAPACITY -> "no value is large enough";
            case REJECTS, CREW, UNCOILERS -> "no number is enough";
            case ENTRY_TOP_SPEED -> "no value is fast enough";
            case COIL_LENGTH -> "no value is long enough";
        };
    }

    /** Says which numbers have no value that meets the target, all else as it is; empty where each of them has one. */
    static Optional<String> noneEnough(Limits limits) {
        List<String> names = Stream.concat(
                        limits.limits().stream()
                                .filter(LimitWords::isMissed)
                                .map(limit -> driven(limit.what()) + slowest(limit, limits)),
                        limits.counts().stream()
                                .filter(limit -> limit.smallest().isEmpty())
                                .map(limit -> driven(limit.what())))
                .toList();
        return names.isEmpty() ? Optional.empty() : Optional.of("No value of " + listed(names) + " alone is enough.");
    }

    /** A process has to be faster than it is slowed to, or passes joints at: below that nothing is tried. */
    private static String slowest(LineLimit limit, Limits limits) {
        double bound = limits.request().line().ratedSpeedsMustExceed();
        return limit.what() == Lever.What.PROCESS_SPEED && bound > 0
                ? " (above " + Units.of(limits.request().resultsIn()).text(Kind.SPEED, bound) + ")"
                : "";
    }

    private static boolean isMissed(LineLimit limit) {
        return limit.crossing().answered() == Crossing.Found.MISSED_THROUGHOUT;
    }

    /** "a", "a or b", "a, b or c". */
    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    private static String driven(Lever.What what) {
        return switch (what) {
            case PROCESS_SPEED -> "process speed";
            case JOINT_CYCLE_TIME -> "joint cycle time";
            case CAPACITY -> "accumulator capacity";
            case REJECTS -> "rejected joints";
            case CREW -> "crew";
            case UNCOILERS -> "number of uncoilers";
            case ELEMENT -> "time of an element";
            case ENTRY_TOP_SPEED -> "entry top speed";
            case COIL_LENGTH -> "coil length";
        };
    }

    private static String driven(CountLimit.What what) {
        return switch (what) {
            case CREW -> "crew";
            case UNCOILERS -> "number of uncoilers";
        };
    }

    static String name(LineLimit.Difference difference) {
        return switch (difference) {
            case CHANCE -> "times vary";
            case TARGET -> "the target";
            case REFILL -> "not refilled";
            case PREPARATION -> "waiting for coils";
            case SLOWING -> "slowing";
            case DOWNTIME -> "process downtime";
            case COILS_DIFFER -> "coils differ";
            case OCCASIONAL_WORK -> "occasional work";
            case WHOLE_STRANDS -> "whole strands";
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
            case WHOLE_STRANDS ->
                "The accumulator grows by whole strands of its stroke; the hand calculation gives the capacity that is needed.";
            case RUN_LENGTH ->
                "Beyond the closed-form limit a shortfall grows slowly; the run begins with a full accumulator and may end before it"
                        + " is used up.";
        };
    }

    /** What keeps the line from going further; empty where it is not known. */
    static Optional<String> limitingFactor(LineLimit limit) {
        return limit.notFeasible()
                .map(Message::path)
                .or(() -> LargestCause.of(limit.beyond()))
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
