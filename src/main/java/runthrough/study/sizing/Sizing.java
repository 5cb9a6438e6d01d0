package runthrough.study.sizing;

import java.util.List;
import java.util.Optional;
import runthrough.handcalc.HandCalculation;
import runthrough.plant.SimulationRequest;
import runthrough.study.Verdict;
import runthrough.study.cause.Cause;
import runthrough.study.cause.CauseCounts;
import runthrough.study.search.Crossing;
import runthrough.study.statistics.Estimate;
import runthrough.study.statistics.RelativeHalfWidth;

/**
 * How large the accumulator must be, so that the target share of coil changes runs through.
 *
 * <p>Only the capacity is changed, by the stroke, sag or diameter of the accumulator as it is; reserve and every level given
 * in metres stay as they are. A capacity that the line's own check refuses, say one below the reserve, is not enough.
 *
 * @param request what was asked
 * @param target share of coil changes that should run through, in (0, 1)
 * @param answer what came out; says which of the fields below are filled
 * @param chance whether anything in the line is random; if not, the capacity is exact but for its precision
 * @param replications that each capacity was tried with, {@code >= 1}
 * @param capacity the smallest capacity (m) and its 95 % interval; empty unless {@link Answer#FOUND}. Its {@code value} is
 *     there always, its {@code sure}, the upper end, only where the run can show the target met
 * @param smallest the accumulator at which the target is shown to be met, or in a run too short to show it seen to be met; empty
 *     with it
 * @param sure the accumulator of the upper end of the interval; empty with it
 * @param possible the accumulator of the lower end of the interval; empty with it
 * @param present the accumulator as it is and what share runs through with it; empty where it does not apply
 * @param causes of the coil changes that do not run through with the accumulator as it is; none where it does not apply
 * @param interval whether the interval is as narrow as was asked for, its half-width being a part of the capacity; empty unless
 *     {@link Answer#FOUND}
 * @param resolution how many coil changes it takes to show the target met at all; its {@code toDecide} is empty here
 * @param curve share against capacity, smallest capacity first; each point under the same random numbers
 * @param handCalculation closed forms of the line as it is, for the coil that is hardest on it: capacity needed for the mean
 *     joint cycle time
 * @param noneEnough why no capacity is enough and what would free it; only with {@link Answer#NONE_IS_ENOUGH}
 * @param strands the smallest capacity (m) in whole strands, where the accumulator has some: {@code answer()} of it
 * @param withoutStop the smallest capacity (m) that meets the plan's target without a stop, in whole strands where there are some:
 *     {@code answer()} of it, empty where none is enough; empty without such a target
 */
public record Sizing(
        SimulationRequest request,
        double target,
        Answer answer,
        boolean chance,
        int replications,
        Optional<Crossing> capacity,
        Optional<Size> smallest,
        Optional<Size> sure,
        Optional<Size> possible,
        Optional<Point> present,
        CauseCounts causes,
        Optional<RelativeHalfWidth> interval,
        Verdict.Resolution resolution,
        List<Point> curve,
        HandCalculation handCalculation,
        Optional<NoneEnough> noneEnough,
        Optional<Crossing> strands,
        Optional<Crossing> withoutStop) {

    /** Two shares closer than this are the same but for rounding. */
    private static final double ROUNDING = 1e-12;

    public Sizing {
        curve = List.copyOf(curve);
    }

    /**
     * By how much the share fell at most, in [0, 1], from a capacity to a larger one under the same random numbers, as far as was tried:
     * 0 where more capacity never did worse.
     */
    public double fall() {
        double onCurve = curve.stream()
                .filter(point -> point.share().isPresent())
                .mapToDouble(point -> point.envelope() - point.share().get().mean())
                .max()
                .orElse(0);
        double searched = capacity.map(Crossing::fall).orElse(0.0);
        return Math.max(searched, onCurve > ROUNDING ? onCurve : 0);
    }

    /** What came of it. */
    public enum Answer {
        /** There is a smallest capacity. */
        FOUND,
        /** However large the accumulator, it runs empty in the long run, or would without the process's downtime. */
        NONE_IS_ENOUGH,
        /** Entry and process are one strip: there is no accumulator to size. */
        NOT_APPLICABLE
    }

    /**
     * One capacity that was tried.
     *
     * @param size the accumulator
     * @param share of coil changes run through and its interval; empty where the line's own check refuses the capacity
     * @param lostTime that starved stops cost in a year (s); empty where the line's own check refuses the capacity
     * @param envelope the greatest share seen at this or any smaller capacity, in [0, 1]: what to draw, so that more capacity
     *     never reads as worse; the same as the mean of {@code share} unless the line is not monotone, see {@link
     *     Crossing#fall}
     */
    public record Point(Size size, Optional<Estimate> share, Optional<Estimate> lostTime, double envelope) {}

    /**
     * Why no capacity is enough.
     *
     * @param cause {@link Cause#WAITING_FOR_PREPARATION}, {@link Cause#WAITING_FOR_PEOPLE} or {@link Cause#BOTH_WAITS}: some
     *     capacity would be enough if the joints did not wait for that; else {@link Cause#ACCUMULATOR_NOT_FULL}: the entry brings
     *     less strip in the long run than the process uses
     * @param growth how much more strip (m) is missing after each coil change than after the one before, {@code > 0}
     * @param byDowntime whether only process downtime lets an accumulator of some size fill again: growth and remedies are those
     *     of the line without downtime
     * @param remedies each of which, on its own, lets some capacity be enough; those that do not help are given too
     */
    public record NoneEnough(Cause cause, Estimate growth, boolean byDowntime, List<Remedy> remedies) {
        public NoneEnough {
            remedies = List.copyOf(remedies);
        }
    }
}
