package runthrough.study.map;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.Line;
import runthrough.plant.LineFigure;
import runthrough.plant.SimulationRequest;
import runthrough.plant.StorageForm;
import runthrough.study.Goal;
import runthrough.study.lever.Lever;
import runthrough.study.lever.LeverAnswer;
import runthrough.study.lever.LeverAnswer.Status;
import runthrough.study.lever.LeverRun;
import runthrough.study.lever.LineLevers;
import runthrough.study.lever.Varied;
import runthrough.study.search.Crossing;

/**
 * Where the target is met along an axis that is a lever, the number on the other as it is: the lever's own answer.
 *
 * @param answer of the lever
 * @param value (SI) that it is on the axis; empty where the target is met or missed at all values that were tried, and where the axis
 *     does not reach there
 * @param isTakenOff whether the axis is of seconds off every pass, of which more are easier on the line
 */
public record AxisLimit(LeverAnswer answer, OptionalDouble value, boolean isTakenOff) {

    private static final double ROUNDING = 1e-9;

    /**
     * That of {@code axis} for {@code goal}, tried by {@code run}; empty where the axis is no lever.
     *
     * @param now the line's own number on the axis (SI)
     */
    static Optional<AxisLimit> of(MapAxis axis, double now, SimulationRequest request, Goal goal, LeverRun run) {
        return axis.lever()
                .map(new LineLevers(request.line(), request.resultsIn())::of)
                .flatMap(varied -> perUnit(varied, now).stream()
                        .mapToObj(unit -> of(varied, unit, now, goal, run))
                        .findFirst());
    }

    /** What of the lever a unit of the axis is: 1, or a strand; empty where the axis has another number than the lever. */
    private static OptionalDouble perUnit(Varied varied, double now) {
        if (varied.lever().what() == Lever.What.JOINT_CYCLE_TIME) {
            return OptionalDouble.of(1);
        }
        double unit = varied.present() / now;
        boolean isSame = Math.abs(unit - 1) <= ROUNDING;
        boolean isStrand = varied.lever().what() == Lever.What.CAPACITY
                && varied.line().accumulator().form() instanceof StorageForm.Strands strands
                && Math.abs(unit / strands.stroke() - 1) <= ROUNDING;
        return isSame || isStrand ? OptionalDouble.of(isSame ? 1 : unit) : OptionalDouble.empty();
    }

    private static AxisLimit of(Varied varied, double unit, double now, Goal goal, LeverRun run) {
        Crossing crossing = run.along(varied).find(goal, varied.present());
        Status status = switch (crossing.answered()) {
            case CROSSED -> Status.ENOUGH;
            case MET_THROUGHOUT -> Status.NONE_NEEDED;
            case MISSED_THROUGHOUT -> Status.NONE_IS_ENOUGH;
        };
        LeverAnswer answer = LeverAnswer.of(varied, goal, status, Optional.of(crossing), Optional.empty());
        OptionalDouble value = answer.value();
        if (value.isEmpty() || varied.lever().what() != Lever.What.JOINT_CYCLE_TIME) {
            return new AxisLimit(
                    answer, value.isPresent() ? OptionalDouble.of(value.getAsDouble() / unit) : value, false);
        }
        Line there = varied.variant().apply(value.getAsDouble());
        return isTakenOff(varied.line(), now)
                ? new AxisLimit(answer, secondsOff(there), true)
                : new AxisLimit(answer, jointCycleTime(there), false);
    }

    /** Whether a number of the joint cycle time, {@code now} (s), is what comes off every pass, and not the mean. */
    private static boolean isTakenOff(Line line, double now) {
        double mean = jointCycleTime(line).orElse(Double.NaN);
        return !(Math.abs(now - mean) <= ROUNDING * mean);
    }

    private static OptionalDouble secondsOff(Line line) {
        return line.change().added() > 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(line.change().joinShorterBy());
    }

    /** Of the seconds off a pass the mean that they give. */
    private static OptionalDouble jointCycleTime(Line line) {
        return LineFigure.JOINT_CYCLE_TIME.of(line);
    }

    /** Whether the line meets the target as it is. */
    public boolean isMetNow() {
        OptionalDouble least = answer.value();
        return least.isEmpty()
                ? answer.status() == Status.NONE_NEEDED
                : isHarderWhenLarger()
                        ? answer.present() <= least.getAsDouble()
                        : answer.present() >= least.getAsDouble();
    }

    private boolean isHarderWhenLarger() {
        return answer.lever().what().harder() == Crossing.Harder.LARGER;
    }

    /** Whether the value lies beyond the line's own {@code now}, towards larger ones. */
    boolean isUpwards(double now) {
        return value.getAsDouble() > now || (value.getAsDouble() == now && isHarderWhenLarger() != isTakenOff);
    }
}
