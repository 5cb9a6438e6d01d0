package runthrough.study.lever;

import java.util.Optional;
import java.util.OptionalDouble;
import runthrough.plant.StorageForm;
import runthrough.study.Goal;
import runthrough.study.search.Crossing;
import runthrough.study.statistics.Estimate;

/**
 * What one lever has to be set to, all else as it is, so that a target is met.
 *
 * <p>Rule LEVER-10.
 *
 * @param lever that is varied
 * @param goal that is to be reached
 * @param status what came out
 * @param present value of the lever now, in the unit of {@link Lever.What}
 * @param strand what a strand holds (m), where capacity comes in whole strands
 * @param crossing where along the lever the target is met; empty where it was not looked for
 * @param cost what comes out with the value; of a process speed that is enough, which lets less come out
 */
public record LeverAnswer(
        Lever lever,
        Goal goal,
        Status status,
        double present,
        OptionalDouble strand,
        Optional<Crossing> crossing,
        Optional<Cost> cost) {

    /**
     * Good output (m/s) over the replications of the plan.
     *
     * @param with the value
     * @param now as the line is: that of the verdict
     */
    public record Cost(Estimate with, Estimate now) {}

    /** The answer of {@code varied}. */
    public static LeverAnswer of(
            Varied varied, Goal goal, Status status, Optional<Crossing> crossing, Optional<Cost> cost) {
        boolean isStrands = varied.lever().what() == Lever.What.CAPACITY
                && varied.line().accumulator().form() instanceof StorageForm.Strands;
        return new LeverAnswer(
                varied.lever(),
                goal,
                status,
                varied.present(),
                isStrands ? OptionalDouble.of(varied.scale().step()) : OptionalDouble.empty(),
                crossing,
                cost);
    }

    /** What came out. */
    public enum Status {
        /** The line meets the target as it is. */
        NONE_NEEDED,
        /** With {@link LeverAnswer#value} the line meets the target. */
        ENOUGH,
        /** No value that was tried is enough. */
        NONE_IS_ENOUGH,
        /** The line has no such thing, or it can only be made harder. */
        DOES_NOT_APPLY
    }

    /** The value nearest to the present one with which the target is met. */
    public OptionalDouble value() {
        return status == Status.ENOUGH ? crossing.orElseThrow().answer() : OptionalDouble.empty();
    }

    /** Whether the target is shown to be met with it, rather than seen in a run too short to show it. */
    public boolean isShown() {
        return crossing.map(Crossing::canBeShown).orElse(true);
    }
}
