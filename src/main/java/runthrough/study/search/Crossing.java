package runthrough.study.search;

import java.util.OptionalDouble;

/**
 * Where along one number of a line the share of coil changes run through crosses the target. All values are in the SI unit
 * of that number. "Hard" is the direction in which more is asked of the line: a smaller accumulator, a faster process.
 *
 * <p>Of all that was simulated, under the same random numbers, three values are given:
 *
 * <ul>
 *   <li>{@code value}, the hardest at which the share seen meets the target: the best guess.
 *   <li>{@code sure}, the hardest at which the target is shown to be met: the whole 95 % interval of the share is at or above
 *       it. At this value the verdict says "meets".
 *   <li>{@code possible}, the hardest at which the target is not shown to be missed.
 * </ul>
 *
 * From {@code sure} to {@code possible} is the 95 % interval of the value at which the true share is the target: the interval
 * of the share, turned round. Where nothing is random all three are the same.
 *
 * @param found whether the target is crossed within the range
 * @param harder in which direction the number is harder on the line
 * @param from lower end of the range searched
 * @param to upper end of the range searched, {@code >= from}
 * @param value see above; empty when the target is missed throughout
 * @param sure see above; empty when no value of the range is shown to meet the target
 * @param possible see above; empty when all of the range is shown to miss the target
 * @param missed the next harder value tried, at which the target is seen to be missed; there when the target is crossed
 * @param precision greatest relative distance between each of the three and the next harder value that was tried
 * @param evaluations how many values were tried
 * @param fall by how much the share fell at most, in [0, 1], between two values of which the second was easier on the line,
 *     under the same random numbers: 0 where the line behaves as one expects. Where it does not, a value counts as good enough when a
 *     harder one is
 * @param canBeShown whether as many coil changes as were run could show the target met at all
 */
public record Crossing(
        Found found,
        Harder harder,
        double from,
        double to,
        OptionalDouble value,
        OptionalDouble sure,
        OptionalDouble possible,
        OptionalDouble missed,
        double precision,
        int evaluations,
        double fall,
        boolean canBeShown) {

    /** Whether the target is crossed within the range searched. */
    public enum Found {
        /** It is met at the easy end and missed at the hard end. */
        CROSSED,
        /** It is met in all of the range: the limit lies beyond its hard end. */
        MET_THROUGHOUT,
        /** It is missed in all of the range: the limit lies beyond its easy end, if there is one. */
        MISSED_THROUGHOUT
    }

    /** Which values of a number are harder on the line. */
    public enum Harder {
        /** Larger ones, as of the process speed or the joint cycle time. */
        LARGER,
        /** Smaller ones, as of the capacity or the entry's top speed. */
        SMALLER
    }

    /**
     * The one number that answers where the target is met: the hardest value at which it is shown to be met; where the run is too
     * short to show that at any value, the hardest at which the share seen meets it. Rule LEVER-2.
     */
    public OptionalDouble answer() {
        return canBeShown ? sure : value;
    }

    /** Whether it is crossed at a value that answers; where none does the target counts as missed throughout. */
    public Found answered() {
        return answer().isPresent() ? found : Found.MISSED_THROUGHOUT;
    }

    /** The same where what was found does not last in the long run: no value is enough. */
    public Crossing missedInTheLongRun() {
        return new Crossing(
                Found.MISSED_THROUGHOUT,
                harder,
                from,
                to,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                precision,
                evaluations,
                fall,
                canBeShown);
    }

    /** What is known of it from {@code least} to {@code most}, of a number whose larger values are the harder ones. */
    public Crossing within(double least, double most) {
        OptionalDouble seen = within(value, least, most);
        boolean isBelow = value.isPresent() && value.getAsDouble() < most;
        Found there = seen.isEmpty() ? Found.MISSED_THROUGHOUT : isBelow ? found : Found.MET_THROUGHOUT;
        return new Crossing(
                there,
                harder,
                least,
                most,
                seen,
                within(sure, least, most),
                within(possible, least, most),
                there == Found.CROSSED ? missed : OptionalDouble.empty(),
                precision,
                evaluations,
                fall,
                canBeShown);
    }

    private static OptionalDouble within(OptionalDouble value, double least, double most) {
        return value.stream()
                .filter(one -> one >= least)
                .map(one -> Math.min(one, most))
                .findFirst();
    }

    /** Lower end of the 95 % interval; empty where it lies beyond the range. Rule LEVER-11. */
    public OptionalDouble low() {
        return harder == Harder.LARGER ? sure : possible;
    }

    /** Upper end of the 95 % interval; empty where it lies beyond the range. Rule LEVER-11. */
    public OptionalDouble high() {
        return harder == Harder.LARGER ? possible : sure;
    }
}
