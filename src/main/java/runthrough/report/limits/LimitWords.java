package runthrough.report.limits;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import runthrough.chart.limits.LimitRow;
import runthrough.handcalc.Limit;
import runthrough.quantity.Kind;
import runthrough.quantity.Notation;
import runthrough.quantity.Numbers;
import runthrough.report.StudyWords;
import runthrough.study.cause.Cause;
import runthrough.study.limits.CountLimit;
import runthrough.study.limits.Limits;
import runthrough.study.limits.LineLimit;
import runthrough.study.search.Crossing;
import runthrough.study.search.Crossing.Found;
import runthrough.study.search.Crossing.Harder;

/**
 * Limits in words and in the user's units.
 *
 * @param limits that are described
 * @param words for numbers
 */
record LimitWords(Limits limits, StudyWords words) {

    static String name(LineLimit.What what) {
        return switch (what) {
            case PROCESS_SPEED -> "fastest process speed";
            case JOINT_CYCLE_TIME_FACTOR -> "longest joint, by a factor";
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

    String value(LineLimit.What what, double si) {
        return switch (what) {
            case JOINT_CYCLE_TIME_FACTOR -> Numbers.text(si) + " x";
            case JOINT_CYCLE_TIME_ADDED -> "+" + words.texts().of(Kind.TIME, si);
            case PROCESS_SPEED, ENTRY_TOP_SPEED, COIL_LENGTH -> words.texts().of(what.kind(), si);
        };
    }

    String present(LineLimit limit) {
        return value(limit.what(), limit.present());
    }

    /** The limit, or on which side of the range it lies. */
    String found(LineLimit limit) {
        Crossing crossing = limit.crossing();
        return found(limit, crossing.found(), crossing.value());
    }

    String handCalculation(LineLimit limit) {
        return found(
                limit,
                limit.closedForm(),
                limit.neighbour().map(near -> OptionalDouble.of(near.value())).orElse(OptionalDouble.empty()));
    }

    private String found(LineLimit limit, Found found, OptionalDouble value) {
        Crossing range = limit.crossing();
        boolean isLarger = range.harder() == Harder.LARGER;
        return switch (found) {
            case CROSSED -> value(limit.what(), value.orElseThrow());
            case MET_THROUGHOUT ->
                isLarger
                        ? "at least " + value(limit.what(), range.to())
                        : "at most " + value(limit.what(), range.from());
            case MISSED_THROUGHOUT -> "none";
        };
    }

    /** Its 95 % interval; an end that the run could not tell is left open. */
    Optional<String> interval(LineLimit limit) {
        Crossing crossing = limit.crossing();
        if (!words.random() || crossing.found() != Found.CROSSED) {
            return Optional.empty();
        }
        Optional<String> low = end(limit, crossing.low());
        Optional<String> high = end(limit, crossing.high());
        if (low.isPresent() && high.isPresent()) {
            return Optional.of(notation(limit.what(), crossing.high().orElseThrow())
                    .range(crossing.low().orElseThrow(), crossing.high().orElseThrow()));
        }
        return low.map(end -> "from " + end)
                .or(() -> high.map(end -> "up to " + end))
                .or(() -> Optional.of("not known"));
    }

    private Optional<String> end(LineLimit limit, OptionalDouble end) {
        return end.isPresent() ? Optional.of(value(limit.what(), end.getAsDouble())) : Optional.empty();
    }

    private Notation notation(LineLimit.What what, double greatest) {
        return what == LineLimit.What.JOINT_CYCLE_TIME_FACTOR
                ? Notation.PLAIN.called("x")
                : words.texts().notation(what.kind(), greatest);
    }

    static String found(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "none";
    }

    /** A limit to be drawn, relative to the present value; joint cycle time that is added, relative to the work at a joint. */
    LimitRow row(LineLimit limit) {
        Crossing crossing = limit.crossing();
        boolean isKnown = words.random() && crossing.found() == Found.CROSSED;
        return new LimitRow(
                name(limit.what()),
                "now " + present(limit) + "; limit " + found(limit)
                        + interval(limit).map(ends -> " (" + ends + ")").orElse("") + "; hand calculation "
                        + handCalculation(limit),
                relative(limit, crossing.value()),
                crossing.found() == Found.CROSSED,
                isKnown ? relative(limit, crossing.low()) : OptionalDouble.empty(),
                isKnown ? relative(limit, crossing.high()) : OptionalDouble.empty(),
                limit.neighbour()
                        .map(near -> relative(limit, OptionalDouble.of(near.value())))
                        .orElse(OptionalDouble.empty()),
                isSpare(limit));
    }

    LimitRow row(CountLimit limit) {
        return new LimitRow(
                name(limit.what()),
                "now " + limit.present() + "; limit " + found(limit.smallest()) + "; hand calculation "
                        + found(limit.closedForm()),
                relative(limit, limit.smallest()),
                true,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                relative(limit, limit.closedForm()),
                limit.smallest().orElse(Integer.MAX_VALUE) <= limit.present());
    }

    private static OptionalDouble relative(CountLimit limit, OptionalInt number) {
        return number.isPresent()
                ? OptionalDouble.of((double) number.getAsInt() / limit.present())
                : OptionalDouble.empty();
    }

    private OptionalDouble relative(LineLimit limit, OptionalDouble value) {
        if (value.isEmpty()) {
            return value;
        }
        double work = limits.handCalculation().joint().work();
        double relative = limit.what() == LineLimit.What.JOINT_CYCLE_TIME_ADDED
                ? (work + value.getAsDouble()) / work
                : value.getAsDouble() / limit.present();
        return Double.isFinite(relative) ? OptionalDouble.of(relative) : OptionalDouble.empty();
    }

    /** Whether the limit is not on the easy side of the present value. */
    private static boolean isSpare(LineLimit limit) {
        double value = limit.crossing().value().orElse(Double.NaN);
        return limit.crossing().harder() == Harder.LARGER ? value >= limit.present() : value <= limit.present();
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

    /** Why simulation and hand calculation do not agree. */
    String why(LineLimit.Difference difference) {
        return switch (difference) {
            case CHANCE -> "The hand calculation takes mean times; on the line times vary, and the longest decide.";
            case TARGET ->
                "The target lets " + words.texts().share(1 - limits.target())
                        + " of coil changes fail; the hand calculation allows none.";
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
